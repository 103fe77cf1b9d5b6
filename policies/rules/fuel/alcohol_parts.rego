# METADATA
# title: Seals to be checked against the alcohol
# description: |
#   More than a tenth of alcohol swells or softens seals that last for years
#   in petrol: a pump weeps, a regulator sticks. What counts is what is in
#   the tank now; the maker's approval of a part for that fuel settles it.
# related_resources:
#   - ref: ornl-elastomers
#     description: nitrile and others in blends
#   - ref: doe-e85-handbook
#     description: materials for E85
#   - ref: from-memory
#     description: general practice with elastomers
# custom:
#   level: advice
#   subject: fuel_parts
#   stages: [joined, filled, first_start, event]
#   message: "{subject} has seals of {seals}, and {fuel} is in the tank"
#   figures:
#     seals: {dimension: text}
#     fuel: {dimension: text}
#   fix: ask the maker and write approved-for, or fit seals of fluorocarbon
#   rulebook: workshop
#   confidence: memory
package rules.fuel.alcohol_parts

import data.rules.fuel.limits.alcohol_parts as limits

judges contains {"subject": part.path, "needs": ["alcohol"]} if some part in input.fuel_parts

# An approval for another fuel says nothing of this one.
judges contains {"subject": part.path, "needs": ["seals"]} if {
	some part in input.fuel_parts
	part.alcohol > limits.alcohol.value
	count({fuel | some fuel in part.approved_for; fuel == part.fuel}) == 0
}

findings contains {
	"subject": part.path,
	"at": "seals",
	"figures": {"seals": part.seals, "fuel": part.fuel},
} if {
	some part in input.fuel_parts
	part.alcohol > limits.alcohol.value
	count({fuel | some fuel in part.approved_for; fuel == part.fuel}) == 0
	some kind in data.tables.fluids.rows
	kind.fluid == part.fuel
	some row in data.tables.materials.rows
	row.material == part.seals
	row.fluid == kind.group
	row.verdict in {"limited", "unfit"}
}
