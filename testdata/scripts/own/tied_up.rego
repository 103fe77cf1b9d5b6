# METADATA
# title: Line that nothing ties up
# description: |
#   A line left hanging when the driveline is out is trodden on.
# related_resources:
#   - ref: common-practice
#     description: this workshop's own
# custom:
#   level: advice
#   subject: lines
#   stages: [out_stored, joined, event]
#   message: "nothing ties {subject} up"
#   figures: {}
#   fix: tie it up, and write down to what
#   rulebook: workshop
#   confidence: practice
package rules.own.tied_up

judges contains {"subject": line.path, "needs": ["tied"]} if some line in input.lines

findings contains {"subject": line.path, "figures": {}} if {
	some line in input.lines
	"tied" in line.none
}
