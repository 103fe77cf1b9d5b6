# METADATA
# title: Hose that is pushed on and no more
# description: |
#   A hose without a clamp holds while it is new and cold. Hot, soft and under
#   pressure it slides off over its bead.
# related_resources:
#   - ref: common-practice
#     description: each hose end has a clamp
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "nothing clamps {subject}"
#   fix: fit a clamp of the right size behind the bead at each end
#   rulebook: workshop
#   confidence: practice
package rules.lines.clamp

judges contains {"subject": line.path, "needs": ["from.half.form", "to.half.form"]} if some line in input.lines

judges contains {"subject": line.path, "needs": ["clamped_by"]} if {
	some line in input.lines
	line.from.half.form == "hose"
}

judges contains {"subject": line.path, "needs": ["clamped_by"]} if {
	some line in input.lines
	line.to.half.form == "hose"
}

findings contains {"subject": line.path, "at": "clamps", "figures": {}} if {
	some line in input.lines
	line.from.half.form == "hose"
	"clamped_by" in line.none
}

findings contains {"subject": line.path, "at": "clamps", "figures": {}} if {
	some line in input.lines
	line.to.half.form == "hose"
	"clamped_by" in line.none
}
