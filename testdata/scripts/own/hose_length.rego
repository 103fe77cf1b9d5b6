# METADATA
# title: Hose longer than this workshop makes
# description: |
#   A long hose loses pressure, and hangs where it chafes.
# related_resources:
#   - ref: common-practice
#     description: this workshop's own
# custom:
#   level: fault
#   subject: lines
#   stages: [out_stored, joined, event]
#   message: "{subject} is {length} long; {most} is the most"
#   figures:
#     length: {dimension: length, like: hose.length}
#     most: {dimension: length, like: hose.length}
#   fix: go a shorter way, or make it a hard line
#   rulebook: workshop
#   confidence: practice
package rules.own.hose_length

import data.rules.own.limits.hose_length as limits

judges contains {"subject": line.path, "needs": ["hose.length"]} if some line in input.lines

findings contains {
	"subject": line.path,
	"at": "hose.length",
	"figures": {"length": line.hose.length, "most": limits.most.value},
} if {
	some line in input.lines
	line.hose.length > limits.most.value
}
