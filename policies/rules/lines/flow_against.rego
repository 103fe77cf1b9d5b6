# METADATA
# title: Line that runs against the driveline
# description: |
#   Feed and return, or suction and scavenge, are often of one size and side by
#   side. Crossed, everything screws together and nothing leaks: the pump draws on
#   nothing and the engine runs without oil, or fuel comes in where it should go out.
# related_resources:
#   - ref: common-practice
#     description: a port that gives meets one that takes
# custom:
#   cases:
#     begins:
#       level: fault
#       message: "{subject} begins where the driveline takes {service}"
#     ends:
#       level: fault
#       message: "{subject} ends where the driveline gives {service}"
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     service: {dimension: text}
#   fix: trace it from end to end; exchange it with the line that belongs there, or write its ends the way the fluid runs
#   rulebook: workshop
#   confidence: practice
package rules.lines.flow_against

# While nobody says what an end meets, it may be the driveline.
judges contains {"subject": line.path, "needs": ["from.port", "to.port"]} if some line in input.lines

judges contains {"subject": line.path, "needs": ["from.port.gives|from.port.takes|from.port.both"]} if {
	some line in input.lines
	line.from.port.boundary
}

judges contains {"subject": line.path, "needs": ["to.port.gives|to.port.takes|to.port.both"]} if {
	some line in input.lines
	line.to.port.boundary
}

findings contains {
	"subject": line.path,
	"at": "from",
	"also": [line.from.port.path],
	"case": "begins",
	"figures": {"service": line.from.port.takes},
} if {
	some line in input.lines
	line.from.port.boundary
}

findings contains {
	"subject": line.path,
	"at": "to",
	"also": [line.to.port.path],
	"case": "ends",
	"figures": {"service": line.to.port.gives},
} if {
	some line in input.lines
	line.to.port.boundary
}
