# METADATA
# title: Tank vent that spills when the car is over
# description: |
#   A car on its side or roof empties its tank through a vent that nothing
#   shuts, often beside the exhaust and with the driver still in it.
# related_resources:
#   - ref: motorsport-uk-ncr
#     description: "chapter 7 appendix 4, art. 2.2: vents, no spill when inverted"
#   - ref: common-practice
#     description: a roll-over valve in the vent
# custom:
#   level: danger
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: the tank vent has no valve that shuts it when the car is over
#   fix: fit a valve that shuts the vent when the car is over, or say how else the vent is kept from spilling
#   caution: do not compete with it; spilt fuel and an overturned car are how drivers burn
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.fuel.vent

judges contains {"subject": fuel.path, "needs": ["cell.vent_valve"]} if some fuel in input.fuel

findings contains {"subject": fuel.path, "at": "cell.vent_valve", "figures": {}} if {
	some fuel in input.fuel
	"vent_valve" in fuel.cell.none
}
