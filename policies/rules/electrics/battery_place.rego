# METADATA
# title: Open battery in the cockpit
# description: |
#   A battery that is neither dry nor sealed gasses while it is charged and
#   spills acid when the car is over. Beside the driver it belongs in a sealed
#   box, or it is one that cannot leak.
# related_resources:
#   - ref: common-practice
#     description: a battery in the cockpit is dry or sealed, or in a sealed box
# custom:
#   level: fault
#   subject: electrics
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: the battery is in the cockpit and is not sealed
#   fix: fit a sealed battery or a sealed box with a vent to the outside, or move it out of the cockpit
#   rulebook: workshop
#   confidence: practice
package rules.electrics.battery_place

judges contains {"subject": electric.path, "needs": ["battery.place", "battery.sealed"]} if {
	some electric in input.electrics
	not electric.battery.place
}

judges contains {"subject": electric.path, "needs": ["battery.sealed"]} if {
	some electric in input.electrics
	electric.battery.place == "cockpit"
}

findings contains {"subject": electric.path, "at": "battery.sealed", "figures": {}} if {
	some electric in input.electrics
	electric.battery.place == "cockpit"
	electric.battery.sealed == false
}
