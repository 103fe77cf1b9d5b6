# METADATA
# title: Stage that does not go with the bay
# description: |
#   Rules are asked by whether a driveline is in the car. A car whose stage says
#   that it is joined or filled while its bay is empty, or that it is out while one
#   is fitted, is judged as something that it is not, and what is wrong with it goes
#   unsaid.
# related_resources:
#   - ref: common-practice
#     description: the sheet on the car says what is in it
# custom:
#   cases:
#     empty:
#       level: fault
#       message: "the car is said to be at the stage {stage}, and no driveline is in it"
#     full:
#       level: fault
#       message: "the car is said to be at the stage {stage}, and {driveline} is in it"
#   subject: cars
#   stages: [rolling, raised, hoisting, out_raised, out_stored, trial_fit, joined, filled, first_start, event]
#   figures:
#     stage: {dimension: text}
#     driveline: {dimension: text}
#   fix: name the driveline that is in the car now, or none, and the stage that it is at
#   rulebook: workshop
#   confidence: practice
package rules.driveline.stage

with_one := {"trial fit", "joined", "filled", "first start", "event"}

without := {"out and raised", "out and stored"}

judges contains {"subject": car.path, "needs": ["driveline", "stage"]} if some car in input.cars

findings contains {"subject": car.path, "at": "stage", "case": "empty", "figures": {"stage": car.stage}} if {
	some car in input.cars
	"driveline" in car.none
	car.stage in with_one
}

findings contains {
	"subject": car.path,
	"at": "stage",
	"case": "full",
	"figures": {"stage": car.stage, "driveline": car.driveline},
} if {
	some car in input.cars
	car.stage in without
}
