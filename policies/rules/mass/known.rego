# METADATA
# title: Centre of mass known only roughly
# description: |
#   Every margin on stands, hook and dolly is reckoned after the uncertainty
#   of the centre of mass is taken off. A guessed height or a centre by eye
#   eats more of the margin than a poor stand does; scales and two plumb lines
#   cost an afternoon.
# related_resources:
#   - ref: common-practice
#     description: a centre measured on scales or by hanging lies within 25 mm
# custom:
#   level: advice
#   subject: weighings
#   stages: [raised, hoisting, out_raised]
#   message: "the centre of mass of the {of} is known to {unsure} only"
#   figures:
#     of: {dimension: text}
#     unsure: {dimension: length, like: unsure}
#   fix: weigh the car on four scales, then once more with one end lifted; hang the driveline from two points and cross the plumb lines
#   rulebook: workshop
#   confidence: practice
package rules.mass.known

import data.rules.mass.limits.known as limits

judges contains {"subject": weighing.path, "needs": ["unsure"]} if some weighing in input.weighings

findings contains {
	"subject": weighing.path,
	"at": "unsure",
	"figures": {"of": weighing.of, "unsure": weighing.unsure},
} if {
	some weighing in input.weighings
	weighing.unsure > limits.unsure.value
}
