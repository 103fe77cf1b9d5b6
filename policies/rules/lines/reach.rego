# METADATA
# title: Hose too short for its run
# description: |
#   A hose shortens by up to a twenty-fifth under pressure, and the engine
#   rocks away from what it is joined to. One without that to spare pulls at
#   its ends with every start. Bends take more; they are not counted here.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: "figure 9-9: a hose shortens under pressure; leave slack"
#   - ref: common-practice
#     description: an end fitting adds some 25 mm
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has {slack} of slack over the straight distance; shortening and movement ask for {needed}"
#   figures:
#     slack: {dimension: length, unit: mm}
#     needed: {dimension: length, unit: mm}
#   fix: make up a longer hose, or turn its ends with angled fittings
#   rulebook: workshop
#   confidence: practice
package rules.lines.reach

import data.rules.lines.limits.reach as limits

judges contains {"subject": line.path, "needs": ["calc.slack", "calc.slack_needed"]} if {
	some line in input.lines
	line.from.port
	line.to.port
}

# A line with an open end, or to a port that there is not, has nothing to reach.
judges contains {"subject": line.path, "needs": ["from.port", "to.port"]} if some line in input.lines

findings contains {
	"subject": line.path,
	"at": "hose.length",
	"figures": {"slack": line.calc.slack, "needed": line.calc.slack_needed},
} if {
	some line in input.lines
	line.calc.slack + limits.ends.value < line.calc.slack_needed
}
