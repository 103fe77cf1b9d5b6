# METADATA
# title: Fluid too fast for its line
# description: |
#   A suction line that is too narrow starves its pump and boils the fuel in
#   it. On the pressure side of the oil a narrow line costs pressure and
#   heats the oil. The figures are rules of thumb for hydraulics, so this is
#   advice; a fuel feed is judged by pressure, and coolant not at all.
# related_resources:
#   - ref: line-velocity-us
#     description: velocity by kind of line
# custom:
#   cases:
#     suction:
#       level: advice
#       message: "{subject} draws fuel at {velocity}; {usual} is usual on a suction line"
#     pressure:
#       level: advice
#       message: "{subject} carries oil at {velocity}; {usual} is the most on a pressure line"
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     velocity: {dimension: speed}
#     usual: {dimension: speed}
#   fix: use the next larger hose and fittings, or shorten the line
#   rulebook: workshop
#   confidence: practice
package rules.lines.velocity

import data.rules.lines.limits.velocity as limits

oils := {"engine oil", "gearbox oil", "axle oil"}

judges contains {"subject": line.path, "needs": ["calc.velocity_most"]} if {
	some line in input.lines
	line.service == "fuel"
	line.pumped_by == "suction"
}

judges contains {"subject": line.path, "needs": ["calc.velocity_most"]} if {
	some line in input.lines
	line.service in oils
	line.pumped_by == "pump"
}

judges contains {"subject": line.path, "needs": ["service", "pumped_by", "calc.velocity_most"]} if {
	some line in input.lines
	not line.service
}

judges contains {"subject": line.path, "needs": ["pumped_by", "calc.velocity_most"]} if {
	some line in input.lines
	not line.pumped_by
}

findings contains {
	"subject": line.path,
	"at": "hose",
	"case": "suction",
	"figures": {"velocity": line.calc.velocity_most, "usual": limits.fuel_suction.value},
} if {
	some line in input.lines
	line.service == "fuel"
	line.pumped_by == "suction"
	line.calc.velocity_most > limits.fuel_suction.value
}

findings contains {
	"subject": line.path,
	"at": "hose",
	"case": "pressure",
	"figures": {"velocity": line.calc.velocity_most, "usual": limits.oil_pressure.value},
} if {
	some line in input.lines
	line.service in oils
	line.pumped_by == "pump"
	line.calc.velocity_most > limits.oil_pressure.value
}
