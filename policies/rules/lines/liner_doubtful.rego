# METADATA
# title: Liner to be checked against its fluid
# description: |
#   General experience has this liner swell, harden or soften in this fluid.
#   Much turns on the grade, so ask the maker of the hose; a hose that was
#   approved for the fluid is not found here.
# related_resources:
#   - ref: from-memory
#     description: general practice with elastomers
#   - ref: ornl-elastomers
#     description: nitrile in blends of petrol and ethanol
# custom:
#   level: advice
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} carries {fluid} in a liner of {liner}: {verdict} in general practice"
#   figures:
#     liner: {dimension: text}
#     fluid: {dimension: text}
#     verdict: {dimension: text}
#   fix: ask the maker of the hose and write the approval down, or fit a lined hose of a kind that suits
#   rulebook: workshop
#   confidence: memory
package rules.lines.liner_doubtful

import data.lib.hoses

judges contains {"subject": line.path, "needs": ["kind.liner", "fluid"]} if {
	some line in input.lines
	line.service in hoses.fluids
}

judges contains {"subject": line.path, "needs": ["service", "kind.liner", "fluid"]} if {
	some line in input.lines
	not line.service
}

findings contains {
	"subject": line.path,
	"at": "kind.liner",
	"figures": {"liner": line.kind.liner, "fluid": line.fluid, "verdict": row.verdict},
} if {
	some line in input.lines
	line.service in hoses.fluids

	# Sold for fuel says nothing of which: that takes an approval by name.
	count({fuel | some fuel in line.kind.approved_for; fuel == line.fuel}) == 0
	count({service | some service in line.kind.for; service == line.service; not line.fuel}) == 0

	some row in data.tables.materials.rows
	row.material == line.kind.liner
	row.fluid == line.fluid
	doubtful(row)
}

doubtful(row) if row.verdict == "limited"

# What a published source calls unfit is a fault of lines.liner_unfit.
doubtful(row) if {
	row.verdict == "unfit"
	not row.confidence == "published"
}
