# METADATA
# title: Line that ends in the open
# description: |
#   A line that carries fuel, oil or hydraulic fluid and ends in the open
#   empties itself where it ends. A vent, drain or breather may; then its
#   port says so.
# related_resources:
#   - ref: common-practice
#     description: a full line has two closed ends
# custom:
#   level: fault
#   subject: lines
#   stages: [filled, first_start, event]
#   message: "{subject} carries {service} and ends {where}"
#   figures:
#     where: {dimension: text}
#     service: {dimension: text}
#   fix: join its other end, cap it, or give the purpose of the port that it comes from
#   rulebook: workshop
#   confidence: practice
package rules.lines.open_end

liquids := {"fuel", "engine oil", "gearbox oil", "axle oil", "brake fluid", "clutch fluid", "steering fluid"}

judges contains {"subject": line.path, "needs": ["from|ends", "to|ends"]} if {
	some line in input.lines
	line.service in liquids
}

judges contains {"subject": line.path, "needs": ["service", "from|ends", "to|ends"]} if {
	some line in input.lines
	not line.service
}

# An end in the open air ends somewhere.
judges contains {"subject": line.path, "needs": ["ends"]} if {
	some line in input.lines
	line.service in liquids
	"port" in line.from.none
}

judges contains {"subject": line.path, "needs": ["ends"]} if {
	some line in input.lines
	line.service in liquids
	"port" in line.to.none
}

findings contains {
	"subject": line.path,
	"at": "ends",
	"figures": {"where": where, "service": line.service},
} if {
	some line in input.lines
	line.service in liquids
	not line.from.port.purpose
	not line.to.port.purpose
	where := line.ends
}
