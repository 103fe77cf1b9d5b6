# METADATA
# title: No such port on the driveline
# description: |
#   The car has a line, rod or plug for a port that the driveline in it does
#   not have. It was made for another driveline, or the port bears another
#   name here.
# related_resources:
#   - ref: common-practice
#     description: each half of a joint has its mate
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} goes to {port}, which there is not"
#   figures:
#     port: {dimension: text}
#   fix: look for the port under another name on the driveline; if it has none, the line wants a new end, a blank or an adaptor
#   rulebook: workshop
#   confidence: practice
package rules.fittings.missing_port

judges contains {"subject": joint.path, "needs": ["meet.port"]} if some joint in input.joints

findings contains {"subject": joint.path, "at": "meet.port", "figures": {"port": joint.meet.port}} if {
	some joint in input.joints
	"there" in joint.none
}
