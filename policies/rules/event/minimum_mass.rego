# METADATA
# title: Car under the minimum of its class
# description: |
#   A lighter driveline can take the car under the minimum of its class, and a
#   larger engine moves it into a class with a higher one. Scales at the event
#   decide; whether the driver counts, the class rules say.
# related_resources:
#   - ref: common-practice
#     description: mass on the scales against the class minimum
# custom:
#   level: fault
#   subject: cars
#   stages: [event]
#   message: "the car weighs {mass} without its driver; the minimum of its class is {least}"
#   figures:
#     mass: {dimension: mass, like: minimum_mass}
#     least: {dimension: mass, like: minimum_mass}
#   fix: weigh the car as the class rules say, and bolt in ballast for what is missing
#   rulebook: workshop
#   confidence: practice
package rules.event.minimum_mass

judges contains {"subject": car.path, "needs": ["minimum_mass", "calc.mass_with_driveline"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "minimum_mass",
	"figures": {"mass": car.calc.mass_with_driveline, "least": car.minimum_mass},
} if {
	some car in input.cars
	car.calc.mass_with_driveline < car.minimum_mass
}
