# METADATA
# title: Port joined to nothing
# description: |
#   A port that nothing joins and nothing closes spills what it holds, draws
#   dirt, or shows that a line was forgotten. After a swap it is the port
#   that the last car did not have.
# related_resources:
#   - ref: common-practice
#     description: every port is joined, capped, or has a purpose
# custom:
#   level: fault
#   subject: ports
#   stages: [joined, filled, first_start, event]
#   message: "{subject} is joined to nothing and not said to be closed"
#   fix: "join it, cap it and write the cap down, or give its purpose: vent, drain, reference, breather, spare or fill"
#   rulebook: workshop
#   confidence: practice
package rules.fittings.open_port

electrical := {"stud", "ring", "blade"}

judges contains {"subject": port.path, "needs": []} if {
	some port in input.ports
	faces_car(port.boundary, port.owner)
}

judges contains {"subject": port.path, "needs": ["half.form", "settled"]} if {
	some port in input.ports
	faces_car(port.boundary, port.owner)
	not port.joined_by
}

findings contains {"subject": port.path, "figures": {}} if {
	some port in input.ports
	faces_car(port.boundary, port.owner)
	plumbed(port.half.form)
	port.settled
	not port.joined_by
	not port.capped
	not port.purpose
	not port.may_stay_open
}

# What the driveline joins within itself is its builder's business.
faces_car(boundary, _) if boundary

faces_car(_, owner) if owner == "car"

plumbed(form) if not form in electrical
