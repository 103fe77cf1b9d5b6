# METADATA
# title: Main switch that cannot be worked from outside
# description: |
#   A marshal at a closed car cannot reach past the driver for a switch in the
#   cockpit.
# related_resources:
#   - ref: fia-253
#     description: "art. 13: worked from the seat and, on a closed car, from outside"
# custom:
#   level: danger
#   subject: electrics
#   stages: [event]
#   message: "the main switch of {subject} can only be worked from the cockpit, and the car has a roof"
#   figures: {}
#   fix: fit a second handle outside, by the windscreen, and mark it
#   caution: do not run the car in an event until a marshal can reach the switch
#   rulebook: appendix-j
#   confidence: published
#   basis: hazard
package rules.safety.isolator_handle

judges contains {"subject": electric.path, "needs": ["car.closed", "isolator.handles"]} if {
	some electric in input.electrics
	not electric.car.closed == false
}

findings contains {"subject": electric.path, "at": "isolator.handles", "figures": {}} if {
	some electric in input.electrics
	electric.car.closed
	electric.isolator.handles == ["cockpit"]
}
