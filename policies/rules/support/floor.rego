# METADATA
# title: Car raised on a soft or sloping floor
# description: |
#   A stand sinks into soft ground or walks down a slope, and the car goes with
#   it.
# related_resources:
#   - ref: hse-motor-vehicle-repair
#     description: hard, level ground
#   - ref: 29-cfr-1910.244
#     description: "(a)(2): the base is blocked where the ground is not firm"
# custom:
#   level: danger
#   subject: support
#   stages: [raised, hoisting, out_raised]
#   message: "the car is to stand on a floor that is {floor}"
#   figures:
#     floor: {dimension: text}
#   fix: move to a hard, level floor
#   caution: do not go under a car that stands on soft or sloping ground
#   rulebook: workshop
#   confidence: published
#   basis: hazard
#   waivable: false
package rules.support.floor

unsound := {"hard and sloping", "gravel", "grass"}

judges contains {"subject": support.path, "needs": ["floor"]} if some support in input.support

findings contains {"subject": support.path, "at": "floor", "figures": {"floor": support.floor}} if {
	some support in input.support
	support.floor in unsound
}
