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
#   cases:
#     pump:
#       level: advice
#       message: "the pump has seals of {seals}, and {fuel} is in the tank"
#     filter:
#       level: advice
#       message: "the filter has seals of {seals}, and {fuel} is in the tank"
#     regulator:
#       level: advice
#       message: "the regulator has seals of {seals}, and {fuel} is in the tank"
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   figures:
#     seals: {dimension: text}
#     fuel: {dimension: text}
#   fix: ask the maker and write approved-for, or fit seals of fluorocarbon
#   rulebook: workshop
#   confidence: memory
package rules.fuel.alcohol_parts

import data.rules.fuel.limits.alcohol_parts as limits

judges contains {
	"subject": fuel.path,
	"needs": [
		"calc.alcohol",
		"pump.seals|pump.approved_for",
		"filter.seals|filter.approved_for",
		"regulator.seals|regulator.approved_for",
	],
} if {
	some fuel in input.fuel
	over_limit(fuel.calc.alcohol)
}

judges contains {"subject": fuel.path, "needs": ["calc.alcohol"]} if {
	some fuel in input.fuel
	not fuel.calc.alcohol
}

findings contains {
	"subject": fuel.path,
	"at": "pump.seals",
	"case": "pump",
	"figures": {"seals": fuel.pump.seals, "fuel": fuel.cell.filled_with},
} if {
	some fuel in input.fuel
	over_limit(fuel.calc.alcohol)
	count([1 | some word in fuel.pump.approved_for; word == fuel.cell.filled_with]) == 0
	doubtful(fuel.pump.seals, fuel.cell.filled_with)
}

findings contains {
	"subject": fuel.path,
	"at": "filter.seals",
	"case": "filter",
	"figures": {"seals": fuel.filter.seals, "fuel": fuel.cell.filled_with},
} if {
	some fuel in input.fuel
	over_limit(fuel.calc.alcohol)
	count([1 | some word in fuel.filter.approved_for; word == fuel.cell.filled_with]) == 0
	doubtful(fuel.filter.seals, fuel.cell.filled_with)
}

findings contains {
	"subject": fuel.path,
	"at": "regulator.seals",
	"case": "regulator",
	"figures": {"seals": fuel.regulator.seals, "fuel": fuel.cell.filled_with},
} if {
	some fuel in input.fuel
	over_limit(fuel.calc.alcohol)
	count([1 | some word in fuel.regulator.approved_for; word == fuel.cell.filled_with]) == 0
	doubtful(fuel.regulator.seals, fuel.cell.filled_with)
}

over_limit(alcohol) if alcohol > limits.alcohol.value

doubtful(seal, fuel) if {
	some kind in data.tables.fluids.rows
	kind.fluid == fuel
	some row in data.tables.materials.rows
	row.material == seal
	row.fluid == kind.group
	row.verdict in {"limited", "unfit"}
}
