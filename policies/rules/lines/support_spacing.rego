# METADATA
# title: Long hose between clips
# description: |
#   A hose that hangs free over a long run swings with the car, chafes what it
#   touches and pulls at its fittings.
# related_resources:
#   - ref: navedtra-14105
#     description: chapter 5, support of flexible hose
# custom:
#   level: advice
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} runs {run} between clips; {most} is usual"
#   figures:
#     run: {dimension: length, like: clips}
#     most: {dimension: length, like: clips}
#   fix: add a clip in the longest free run, with a cushion where it holds the hose
#   rulebook: workshop
#   confidence: published
package rules.lines.support_spacing

import data.rules.lines.limits.support_spacing as limits

judges contains {"subject": line.path, "needs": ["clips"]} if some line in input.lines

# A hose without clips runs free from end to end.
judges contains {"subject": line.path, "needs": ["hose.length"]} if {
	some line in input.lines
	"clips" in line.none
}

findings contains {
	"subject": line.path,
	"at": "clips",
	"figures": {"run": line.clips, "most": limits.free_run.value},
} if {
	some line in input.lines
	line.clips > limits.free_run.value
}

findings contains {
	"subject": line.path,
	"at": "clips",
	"figures": {"run": line.hose.length, "most": limits.free_run.value},
} if {
	some line in input.lines
	"clips" in line.none
	line.hose.length > limits.free_run.value
}
