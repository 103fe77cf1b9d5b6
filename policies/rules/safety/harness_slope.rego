# METADATA
# title: Shoulder straps too steep
# description: |
#   In a frontal crash a strap that runs steeply down from the shoulder pulls the
#   body into the seat as well as back, and the spine takes that load.
# related_resources:
#   - ref: fia-253
#     description: "art. 6.2: straps go back and down, no more than 45 degrees below the horizontal"
# custom:
#   level: danger
#   subject: cars
#   stages: [event]
#   message: "the shoulder straps fall {slope} below the horizontal; {steepest} is the most allowed"
#   figures:
#     slope: {dimension: angle, like: safety.harness.shoulder_slope}
#     steepest: {dimension: angle, like: safety.harness.shoulder_slope}
#   fix: anchor the shoulder straps higher, to a bar behind the seat that the rulebook accepts
#   caution: do not drive the car on this harness; have its mounting inspected
#   rulebook: appendix-j
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.safety.harness_slope

import data.rules.safety.limits.harness_slope as limits

judges contains {"subject": car.path, "needs": ["safety.harness.shoulder_slope"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "safety.harness.shoulder_slope",
	"figures": {"slope": car.safety.harness.shoulder_slope, "steepest": limits.steepest.value},
} if {
	some car in input.cars
	car.safety.harness.shoulder_slope > limits.steepest.value
}
