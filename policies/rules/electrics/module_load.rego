# METADATA
# title: Power module over its rating
# description: |
#   Each channel may be within its own limit and all of them together over
#   that of the module. It then switches off as a whole, and the engine with
#   it.
# related_resources:
#   - ref: common-practice
#     description: sum of the steady loads against the total rating
# custom:
#   level: fault
#   subject: modules
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} feeds {load} all the time; it is rated for {rated}"
#   figures:
#     load: {dimension: current, like: rated}
#     rated: {dimension: current, like: rated}
#   fix: move circuits to another module, or draw less
#   rulebook: workshop
#   confidence: practice
package rules.electrics.module_load

judges contains {"subject": module.path, "needs": ["rated", "calc.load"]} if some module in input.modules

findings contains {
	"subject": module.path,
	"at": "rated",
	"figures": {"load": module.calc.load, "rated": module.rated},
} if {
	some module in input.modules
	module.calc.load > module.rated
}
