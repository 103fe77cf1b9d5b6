# METADATA
# title: Little margin before the car tips
# description: |
#   The centre of mass is between the supports, but near their edge. Rigid-floor
#   statics know nothing of a stand that leans, a soft floor or a pull on a bar.
# related_resources:
#   - ref: statics
#     description: distance of the centre of mass from the edge of the supports
#   - ref: common-practice
#     description: a hand's breadth of margin
# custom:
#   level: advice
#   subject: support_cases
#   stages: [raised, hoisting, out_raised]
#   message: "in the state {stage} the centre of mass has {margin} left before the edge of the supports"
#   figures:
#     stage: {dimension: text}
#     margin: {dimension: length}
#   fix: move the stands outwards on that side; weigh all four wheels to know the centre better
#   rulebook: workshop
#   confidence: practice
package rules.support.centre_near

import data.rules.support.limits.centre_near as limits

judges contains {"subject": state.path, "needs": ["calc.margin_left"]} if some state in input.support_cases

findings contains {
	"subject": state.path,
	"figures": {"stage": state.stage, "margin": state.calc.margin_left},
} if {
	some state in input.support_cases
	state.calc.margin_left >= 0
	state.calc.margin_left < limits.margin.value
}
