# METADATA
# title: Stand under something that comes off
# description: |
#   A stand under the gearbox, a cross-member or a subframe holds the car only
#   until the bolt that makes it part of the car is out.
# related_resources:
#   - ref: whsq-alert-2024
#     description: an unbolted axle rolled off the stands that it rested on
#   - ref: common-practice
#     description: stands go under what stays
# custom:
#   level: danger
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "{subject} stands under {under}, which comes off in the swap"
#   figures:
#     under: {dimension: text}
#   fix: stand the car on its chassis before the first bolt of that part is loosened
#   caution: do not loosen that part and do not go under while the car rests on it
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
#   waivable: false
package rules.support.point_leaves

judges contains {"subject": stand.path, "needs": ["under"]} if some stand in input.stands

findings contains {"subject": stand.path, "at": "under", "figures": {"under": stand.under}} if {
	some stand in input.stands
	stand.leaves
}
