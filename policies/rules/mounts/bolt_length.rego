# METADATA
# title: Mount bolt too long for its hole
# description: |
#   A bolt that reaches the end of the thread before its head is home takes its
#   torque and clamps nothing. In an aluminium housing it also bursts the boss.
# related_resources:
#   - ref: common-practice
#     description: a bolt in a blind hole stops on its head, not on its end
# custom:
#   level: fault
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the bolts of {subject} run {past} beyond the full thread"
#   figures:
#     past: {dimension: length, like: bolts.length}
#   fix: fit shorter bolts, and keep the engagement that the metal asks for
#   rulebook: workshop
#   confidence: practice
package rules.mounts.bolt_length

import data.rules.mounts.limits.bolt_length as limits

# A bolt with a nut, or through plain holes, has no bottom to reach.
judges contains {"subject": mount.path, "needs": ["calc.bottoms_by"]} if {
	some mount in input.mounts
	not mount.bolts.nut
	not mount.there.holes.clear
}

findings contains {
	"subject": mount.path,
	"at": "bolts.length",
	"also": [mount.there.path],
	"figures": {"past": mount.calc.bottoms_by},
} if {
	some mount in input.mounts
	not mount.bolts.nut
	not mount.there.holes.clear
	mount.calc.bottoms_by > limits.past.value
}
