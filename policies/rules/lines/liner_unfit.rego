# METADATA
# title: Liner that its fluid attacks
# description: |
#   A liner that its fluid attacks swells, softens or crumbles. It closes the
#   bore, sheds pieces into what lies behind it, and leaks in the end. Only
#   pairs that a published source calls unfit are found here; the maker's own
#   approval counts for more. Sold for fuel means little where the fuels that it is
#   approved for are named: then those count.
# related_resources:
#   - ref: seal-maker-guide
#     description: elastomers in brake fluid and in fuel
#   - ref: elastomers-e10-immersion
#     description: elastomers and polyamides in E10
#   - ref: doe-e85-handbook
#     description: materials for E85
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} carries {fluid} in a liner of {liner}, which it attacks"
#   figures:
#     liner: {dimension: text}
#     fluid: {dimension: text}
#   fix: fit a hose whose liner suits the fluid, or write down the approval of its maker; then look at what lies downstream of the old one
#   rulebook: workshop
#   confidence: published
package rules.lines.liner_unfit

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
	"figures": {"liner": line.kind.liner, "fluid": line.fluid},
} if {
	some line in input.lines
	line.service in hoses.fluids

	# Sold for fuel says nothing of which: that takes an approval by name.
	count({fuel | some fuel in line.kind.approved_for; fuel == line.fuel}) == 0
	count({service | some service in line.kind.for; service == line.service; not line.fuel}) == 0

	some row in data.tables.materials.rows
	row.material == line.kind.liner
	row.fluid == line.fluid
	row.verdict == "unfit"
	row.confidence == "published"
}
