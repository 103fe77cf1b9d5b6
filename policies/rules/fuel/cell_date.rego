# METADATA
# title: Fuel cell bladder past its life
# description: |
#   The bladder of a fuel cell ages whether it is used or not. The rules give
#   it five years from its label, and two more only when its maker has
#   checked it and certified it again.
# related_resources:
#   - ref: fia-253
#     description: art. 14, safety fuel tanks
# custom:
#   level: fault
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: "the {standard} bladder is {days} days past its life"
#   figures:
#     days: {dimension: number}
#     standard: {dimension: text}
#   fix: send the bladder to its maker, or replace it; write the new last day as until
#   rulebook: appendix-j
#   confidence: published
package rules.fuel.cell_date

judges contains {"subject": fuel.path, "needs": ["cell.standard"]} if some fuel in input.fuel

# A tank that carries no standard has no bladder to be dated.
judges contains {"subject": fuel.path, "needs": ["calc.cell_days_left"]} if {
	some fuel in input.fuel
	fuel.cell.standard
}

findings contains {
	"subject": fuel.path,
	"at": "cell.made",
	"figures": {"days": 0 - fuel.calc.cell_days_left, "standard": fuel.cell.standard},
} if {
	some fuel in input.fuel
	fuel.calc.cell_days_left < 0
}
