# METADATA
# title: Brake servo without its vacuum
# description: |
#   The servo stays with the car, and what fed it may have left with the last
#   driveline. An engine with a throttle for each cylinder gives no steady
#   vacuum, and a boosted one blows into a servo that has no check valve. The
#   pedal then turns to stone at the first corner.
# related_resources:
#   - ref: common-practice
#     description: a manifold servo needs a source of vacuum and a check valve
# custom:
#   cases:
#     vacuum:
#       level: danger
#       message: the brake servo is fed by the manifold, and the driveline gives no vacuum
#     valve:
#       level: fault
#       message: the brake servo has no check valve
#   subject: brakes
#   stages: [trial_fit, joined, filled, first_start, event]
#   fix: fit a vacuum pump or tank, or brakes that need no servo; then try the pedal with the engine running
#   caution: do not move the car before the pedal has been tried with the engine running
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.brakes.assist_source

judges contains {"subject": brakes.path, "needs": ["servo.check_valve", "needs.gives_vacuum"]} if {
	some brakes in input.brakes
	brakes.servo.source == "manifold"
}

judges contains {"subject": brakes.path, "needs": ["servo.source"]} if {
	some brakes in input.brakes
	not brakes.servo.source
}

findings contains {"subject": brakes.path, "at": "servo.source", "case": "vacuum", "figures": {}} if {
	some brakes in input.brakes
	brakes.servo.source == "manifold"
	brakes.needs.gives_vacuum == false
}

findings contains {"subject": brakes.path, "at": "servo.check_valve", "case": "valve", "figures": {}} if {
	some brakes in input.brakes
	brakes.servo.source == "manifold"
	brakes.servo.check_valve == false
}
