# METADATA
# title: One port, two lines
# description: |
#   Two lines cannot be screwed to one port. Either one of them was written
#   down at the wrong place, or a tee is missing.
# related_resources:
#   - ref: common-practice
#     description: one port takes one line
# custom:
#   level: fault
#   subject: ports
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is joined by {lines} lines"
#   figures:
#     lines: {dimension: number}
#   fix: give one of them its own port, or put a tee between
#   rulebook: workshop
#   confidence: practice
package rules.fittings.port_taken_twice

single := {
	"37-flare", "45-flare", "inverted-flare", "bubble-flare", "O-ring-boss", "metric-O-ring",
	"washer-face", "taper-pipe", "bead", "barb", "hose", "plain-tube", "V-band", "slip",
	"flange", "spline", "dry-break", "push-connector", "connector",
}

judges contains {"subject": port.path, "needs": ["settled"]} if some port in input.ports

# An electrical post takes several ends; a port of no known form may be one.
judges contains {"subject": port.path, "needs": ["half.form"]} if {
	some port in input.ports
	count(port.joined_by) > 1
}

findings contains {
	"subject": port.path,
	"also": port.joined_by,
	"figures": {"lines": count(port.joined_by)},
} if {
	some port in input.ports
	port.half.form in single
	count(port.joined_by) > 1
}
