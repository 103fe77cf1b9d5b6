# METADATA
# title: Line between two fluids
# description: |
#   Two hoses of one size change places easily when a driveline goes back in. Then
#   a line joins what must never meet: fuel in the oil, oil in the coolant, brake
#   fluid where there should be none. Nothing leaks, so nobody looks.
# related_resources:
#   - ref: common-practice
#     description: both ends of a line are on one system
# custom:
#   cases:
#     hurts:
#       level: danger
#       message: "{subject} comes from {one} and goes to {other}"
#     spoils:
#       level: fault
#       message: "{subject} comes from {one} and goes to {other}"
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     one: {dimension: text}
#     other: {dimension: text}
#   fix: trace the line from end to end and join it to its own system; if it was filled, drain and flush both
#   caution: do not fill it, turn the engine or press a pedal; fuel burns where it does not belong, and brakes fail on the wrong fluid
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.lines.two_fluids

# What may share a line: a liquid and its vapour, two names of one fluid, and
# whatever is air.
families := [
	{"fuel", "fuel vapour"},
	{"engine oil", "crankcase breath"},
	{"gearbox oil", "axle oil"},
	{"coolant", "water"},
	{"brake fluid", "clutch fluid"},
	{"air", "charge air", "compressed air", "manifold pressure", "vacuum", "crankcase breath", "fuel vapour"},
]

grave := {"fuel", "brake fluid"}

judges contains {"subject": line.path, "needs": ["from.port.service", "to.port.service"]} if some line in input.lines

findings contains {
	"subject": line.path,
	"at": "to",
	"also": [line.from.port.path, line.to.port.path],
	"case": "hurts",
	"figures": {"one": one, "other": other},
} if {
	some line in input.lines
	one := line.from.port.service
	other := line.to.port.service
	not together(one, other)
	hurts(one, other)
}

findings contains {
	"subject": line.path,
	"at": "to",
	"also": [line.from.port.path, line.to.port.path],
	"case": "spoils",
	"figures": {"one": one, "other": other},
} if {
	some line in input.lines
	one := line.from.port.service
	other := line.to.port.service
	not together(one, other)
	not hurts(one, other)
}

together(one, other) if one == other

together(one, other) if {
	some family in families
	one in family
	other in family
}

hurts(one, _) if one in grave

hurts(_, other) if other in grave
