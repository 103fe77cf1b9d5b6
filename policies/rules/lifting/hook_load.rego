# METADATA
# title: Hoist over its plate
# description: |
#   What a hoist lifts falls with each notch that its boom goes out. Hook, leveller
#   and chains count as load too.
# related_resources:
#   - ref: hse-motor-vehicle-repair
#     description: never above the rated capacity
#   - ref: 29-cfr-1926.251
#     description: "(a)(2): not loaded beyond the rated load"
# custom:
#   level: danger
#   subject: support
#   stages: [hoisting]
#   message: "{load} hang on the hook; at this boom position the plate says {rated}"
#   figures:
#     load: {dimension: mass}
#     rated: {dimension: mass}
#   fix: shorten the boom or take a larger hoist
#   caution: do not lift; an overloaded hoist tips forward or folds
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.hook_load

judges contains {"subject": support.path, "needs": ["calc.hook_load", "calc.hook_rated"]} if some support in input.support

findings contains {
	"subject": support.path,
	"at": "boom",
	"figures": {"load": support.calc.hook_load, "rated": support.calc.hook_rated},
} if {
	some support in input.support
	support.calc.hook_load > support.calc.hook_rated
}
