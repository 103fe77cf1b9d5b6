# METADATA
# title: Set-up made with another mass
# description: |
#   Ride heights, corner weights, toe, shaft angles and brake balance were set
#   with the mass that the car had that day. Another driveline moves all of
#   them.
# related_resources:
#   - ref: common-practice
#     description: the car is set up again after ten kilograms have come or gone
# custom:
#   level: advice
#   subject: cars
#   stages: [filled, first_start, event]
#   message: "the car weighs {now}; it was set up with {then}"
#   figures:
#     now: {dimension: mass, like: set_up.mass}
#     then: {dimension: mass, like: set_up.mass}
#   fix: weigh the corners and go through ride heights, toe, camber and brake balance, then write down the new set-up
#   rulebook: workshop
#   confidence: practice
package rules.mass.set_up_due

import data.rules.mass.limits.set_up_due as limits

judges contains {"subject": car.path, "needs": ["calc.mass_since_set_up"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "set_up.mass",
	"figures": {"now": car.calc.mass_with_driveline, "then": car.set_up.mass},
} if {
	some car in input.cars
	car.calc.mass_since_set_up > limits.change.value
}
