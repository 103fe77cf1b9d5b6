# METADATA
# title: Towing eye weaker than the car is heavy
# description: |
#   A car in gravel is dragged, not rolled, and takes about its own weight. An
#   eye that tears off takes the hook with it, at speed.
# related_resources:
#   - ref: common-practice
#     description: an eye holds at least the weight of the car
# custom:
#   level: advice
#   subject: tow_eyes
#   stages: [event]
#   message: "{subject} holds {rated}; the car weighs {weight}"
#   figures:
#     rated: {dimension: force, like: rated}
#     weight: {dimension: force, like: rated}
#   fix: fit an eye or strap that holds more, on structure that does too
#   rulebook: workshop
#   confidence: practice
package rules.recovery.eye_strength

judges contains {"subject": eye.path, "needs": ["rated", "calc.weight"]} if some eye in input.tow_eyes

findings contains {
	"subject": eye.path,
	"at": "rated",
	"figures": {"rated": eye.rated, "weight": eye.calc.weight},
} if {
	some eye in input.tow_eyes
	eye.rated < eye.calc.weight
}
