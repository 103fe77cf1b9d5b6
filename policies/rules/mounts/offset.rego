# METADATA
# title: Mount that does not line up
# description: |
#   Where the two halves of a mount stand apart, the bolts pull them together and
#   the rubber, the shaft line and the housing keep the strain. A box that hangs
#   on its own loom has no place to be off from.
# related_resources:
#   - ref: common-practice
#     description: the bolts of a mount go in by hand
# custom:
#   level: fault
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the driveline's half of {subject} lies {offset} off ({towards}); {most} is the most to pull in"
#   figures:
#     offset: {dimension: length, like: at}
#     towards: {dimension: text}
#     most: {dimension: length, like: at}
#   fix: measure both halves and the driveline's place again, then move or shim the bracket
#   rulebook: workshop
#   confidence: practice
package rules.mounts.offset

import data.rules.mounts.limits.offset as limits

judges contains {"subject": mount.path, "needs": ["calc.offset"]} if {
	some mount in input.mounts
	not mount.there.light
}

findings contains {
	"subject": mount.path,
	"at": "at",
	"also": [mount.there.path],
	"figures": {"offset": mount.calc.offset, "towards": mount.calc.offset_towards, "most": limits.most.value},
} if {
	some mount in input.mounts
	not mount.there.light
	mount.calc.offset > limits.most.value
}
