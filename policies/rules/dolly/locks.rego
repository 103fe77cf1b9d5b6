# METADATA
# title: Dolly that rolls away under the load
# description: |
#   The driveline comes down a little to one side of the hook and pushes the dolly
#   off. Whoever is alone then holds the hoist with one hand and the dolly with a
#   foot. Two castors that lock keep it where it was put.
# related_resources:
#   - ref: common-practice
#     description: castors are locked before the hoist lets go
# custom:
#   level: fault
#   subject: support
#   stages: [hoisting]
#   message: "of the castors of dolly {dolly} {locking} lock; it takes {least}"
#   figures:
#     dolly: {dimension: text}
#     locking: {dimension: number}
#     least: {dimension: number}
#   fix: fit castors with brakes, or chock the dolly's wheels from both sides before the driveline comes down
#   rulebook: workshop
#   confidence: practice
package rules.dolly.locks

import data.rules.dolly.limits.locks as limits

judges contains {"subject": support.path, "needs": ["dolly"]} if some support in input.support

judges contains {"subject": support.path, "needs": ["locking"]} if {
	some support in input.support
	support.dolly
}

findings contains {
	"subject": support.path,
	"at": "dolly",
	"figures": {"dolly": support.dolly, "locking": support.locking, "least": limits.least.value},
} if {
	some support in input.support
	support.locking < limits.least.value
}
