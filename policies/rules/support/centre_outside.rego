# METADATA
# title: Car that may tip off its supports
# description: |
#   A car stays up only while its centre of mass is over the ground between its
#   supports. When the hoist takes the driveline's weight the centre moves, and it
#   can cross the edge with the last bolt still in. The figure has the uncertainty
#   of the centre taken off already.
# related_resources:
#   - ref: hewitt-conceptual-physics
#     description: "chapter 8, stability: a thing tips once its centre of gravity is past its base of support"
# custom:
#   level: danger
#   subject: support_cases
#   stages: [raised, hoisting, out_raised]
#   message: "in the state {stage} the centre of mass may lie {out} outside the supports"
#   figures:
#     stage: {dimension: text}
#     out: {dimension: length}
#   fix: move the stands outwards on that side or add a prop; weigh all four wheels to know the centre better
#   caution: do not lift and do not go under until the car stands with a margin
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.support.centre_outside

judges contains {"subject": state.path, "needs": ["calc.margin_left"]} if some state in input.support_cases

findings contains {
	"subject": state.path,
	"figures": {"stage": state.stage, "out": abs(state.calc.margin_left)},
} if {
	some state in input.support_cases
	state.calc.margin_left < 0
}
