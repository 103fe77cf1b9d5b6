# METADATA
# title: Hose hotter than it is rated for
# description: |
#   A hose that runs hotter than its rating hardens, cracks and lets go of
#   its ends long before its date. The fluid heats it from within; a pipe or
#   a turbine beside it heats it from without, unless a sleeve stands
#   between.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: table 9-3, temperature limits of hose
#   - ref: common-practice
#     description: a sleeve keeps off heat from outside, not that of the fluid
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} gets to {hot}; its hose is rated for {rated}"
#   figures:
#     hot: {dimension: temperature, like: kind.hot}
#     rated: {dimension: temperature, like: kind.hot}
#   fix: move it away from the heat, put a heat sleeve or shield on it, or fit a hose rated for the temperature
#   rulebook: workshop
#   confidence: practice
package rules.lines.temperature_rating

judges contains {"subject": line.path, "needs": ["kind.hot", "calc.temperature"]} if {
	some line in input.lines
	not line.kind.liner == "metal"
}

# What is beside it may be hotter than what is in it.
judges contains {"subject": line.path, "needs": ["near"]} if {
	some line in input.lines
	not line.kind.liner == "metal"
	not line.sleeve
}

judges contains {"subject": line.path, "needs": ["from.port.hot|to.port.hot"]} if {
	some line in input.lines
	not line.kind.liner == "metal"
	line.sleeve
}

findings contains {
	"subject": line.path,
	"at": "hose",
	"figures": {"hot": line.calc.temperature, "rated": line.kind.hot},
} if {
	some line in input.lines
	not line.kind.liner == "metal"
	not line.sleeve
	line.calc.temperature > line.kind.hot
}

# Behind a sleeve only the fluid counts.
findings contains {
	"subject": line.path,
	"at": "hose",
	"figures": {"hot": fluid, "rated": line.kind.hot},
} if {
	some line in input.lines
	not line.kind.liner == "metal"
	line.sleeve
	fluid := line.from.port.hot
	fluid > line.kind.hot
}

findings contains {
	"subject": line.path,
	"at": "hose",
	"figures": {"hot": fluid, "rated": line.kind.hot},
} if {
	some line in input.lines
	not line.kind.liner == "metal"
	line.sleeve
	fluid := line.to.port.hot
	fluid > line.kind.hot
}
