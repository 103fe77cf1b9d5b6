# METADATA
# title: Hook that does not go high enough
# description: |
#   The driveline has to clear the lip of the bay before it can be swung out.
#   A hoist that is too low by a hand's breadth is found out with the last
#   mount undone.
# related_resources:
#   - ref: common-practice
#     description: hook height needed against that of the hoist
# custom:
#   level: fault
#   subject: support
#   stages: [hoisting]
#   message: "the hook has to go to {needed}; that of the hoist goes to {reaches}"
#   figures:
#     needed: {dimension: length, like: crane.hook_to}
#     reaches: {dimension: length, like: crane.hook_to}
#   fix: use shorter legs, take off more of what stands in the way, set the car lower, or use another hoist
#   rulebook: workshop
#   confidence: practice
package rules.lifting.hook_height

judges contains {"subject": support.path, "needs": ["crane.hook_to", "calc.hook_needed"]} if {
	some support in input.support
	"up" in support.fit.leaves
}

judges contains {"subject": support.path, "needs": ["fit.leaves"]} if some support in input.support

findings contains {
	"subject": support.path,
	"at": "hoist",
	"figures": {"needed": support.calc.hook_needed, "reaches": support.crane.hook_to},
} if {
	some support in input.support
	support.calc.hook_needed > support.crane.hook_to
}
