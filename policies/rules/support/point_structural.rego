# METADATA
# title: Stand under a place that is not made to carry
# description: |
#   A stand that holds does not help where the sheet or bracket above it gives way.
# related_resources:
#   - ref: whsq-alert-2012
#     description: "a fatal case: a sound stand under a weak member"
#   - ref: hse-motor-vehicle-repair
#     description: the car maker's lifting points
# custom:
#   level: danger
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "{subject} stands under a place that does not carry the car by design"
#   figures: {}
#   fix: move it under a pad, a cage foot or a chassis member that is made to carry the car
#   caution: keep out from under the car until it stands on its structure
#   rulebook: workshop
#   confidence: published
#   basis: hazard
#   waivable: false
package rules.support.point_structural

judges contains {"subject": stand.path, "needs": ["structural"]} if some stand in input.stands

findings contains {"subject": stand.path, "at": "structural", "figures": {}} if {
	some stand in input.stands
	stand.structural == false
}
