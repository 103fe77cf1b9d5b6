# METADATA
# title: Battery that nothing holds
# description: |
#   A battery that comes loose shorts on what it meets, and leaves its place with
#   the force of a thrown stone.
# related_resources:
#   - ref: common-practice
#     description: a battery is bolted down
# custom:
#   level: fault
#   subject: electrics
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "nothing holds the battery"
#   figures: {}
#   fix: fit a clamp or frame over it, with bolts to the structure
#   rulebook: workshop
#   confidence: practice
package rules.electrics.battery_fixed

judges contains {"subject": electric.path, "needs": ["battery.held"]} if some electric in input.electrics

findings contains {"subject": electric.path, "at": "battery.held", "figures": {}} if {
	some electric in input.electrics
	"held" in electric.battery.none
}
