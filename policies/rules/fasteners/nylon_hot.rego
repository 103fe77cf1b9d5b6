# METADATA
# title: Nylon insert nut where it is hot
# description: |
#   The insert softens, and then the nut turns as freely as a plain one.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: paragraph 7-64, self-locking nuts with a fibre or nylon insert
# custom:
#   level: fault
#   subject: fastenings
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has nylon insert nuts at {hot}; they hold to {most}"
#   figures:
#     hot: {dimension: temperature, like: hot}
#     most: {dimension: temperature, like: hot}
#   fix: fit all-metal lock nuts
#   rulebook: workshop
#   confidence: published
package rules.fasteners.nylon_hot

import data.rules.fasteners.limits.nylon_hot as limits

judges contains {"subject": fastening.path, "needs": ["hot"]} if {
	some fastening in input.fastenings
	fastening.nut == "nyloc-nut"
}

# Neither nut nor tapped metal: it may be one.
judges contains {"subject": fastening.path, "needs": ["nut|tapped"]} if {
	some fastening in input.fastenings
	not fastening.nut
	not fastening.tapped
	not fastening.what
	not fastening.head == "quarter-turn"
	not fastening.head == "press-stud"
	not fastening.head == "rivet"
}

findings contains {
	"subject": fastening.path,
	"at": "nut",
	"figures": {"hot": fastening.hot, "most": limits.insert.value},
} if {
	some fastening in input.fastenings
	fastening.nut == "nyloc-nut"
	fastening.hot > limits.insert.value
}
