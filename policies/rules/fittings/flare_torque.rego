# METADATA
# title: Flare nut outside its torque
# description: |
#   Too little and the cone is not seated; too much and the cone cracks or
#   the nut splits, most of all in aluminium. The bands for a soft tube, a
#   machined swivel and steel do not overlap, so each joint is held to its
#   own. A torque in the band does not prove that the joint is tight.
# related_resources:
#   - ref: navedtra-14018
#     description: table 5-9, steel and aluminium hose nuts
#   - ref: tm-55-1520-240
#     description: par. 1-13, nuts on tube
#   - ref: hose-swivel-torque-bands
#     description: machined aluminium swivels
# custom:
#   cases:
#     under:
#       level: fault
#       message: "{subject} is tightened to {torque}; its make-up asks for {least} to {most}"
#     over:
#       level: fault
#       message: "{subject} is tightened to {torque}; its make-up bears no more than {most} (from {least})"
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     torque: {dimension: torque, like: meet.torque}
#     least: {dimension: torque, like: meet.torque}
#     most: {dimension: torque, like: meet.torque}
#   fix: slacken it, look at both cones, and tighten it to the band of its make-up; an aluminium joint that weeps in the band is replaced, not pulled tighter
#   rulebook: workshop
#   confidence: practice
package rules.fittings.flare_torque

judges contains {
	"subject": joint.path,
	"needs": ["meet.torque", "calc.torque_least", "calc.torque_most"],
} if {
	some joint in input.joints
	joint.here.form == "37-flare"
}

judges contains {
	"subject": joint.path,
	"needs": ["meet.torque", "calc.torque_least", "calc.torque_most"],
} if {
	some joint in input.joints
	joint.there.form == "37-flare"
}

findings contains {
	"subject": joint.path,
	"at": "meet.torque",
	"case": "under",
	"figures": {"torque": joint.meet.torque, "least": joint.calc.torque_least, "most": joint.calc.torque_most},
} if {
	some joint in input.joints
	joint.meet.torque < joint.calc.torque_least
}

findings contains {
	"subject": joint.path,
	"at": "meet.torque",
	"case": "over",
	"figures": {"torque": joint.meet.torque, "least": joint.calc.torque_least, "most": joint.calc.torque_most},
} if {
	some joint in input.joints
	joint.meet.torque > joint.calc.torque_most
}
