# METADATA
# title: Two cross joints that do not cancel
# description: |
#   The unevenness of one cross joint is undone by the other only if both
#   stand at the same angle and their yokes lie in one plane. Otherwise the
#   shaft shakes at twice its speed.
# related_resources:
#   - ref: driveline-manual
#     description: both angles equal within one degree, yokes in phase
#   - ref: sae-ae-7
#     description: two joints in phase at equal angles
# custom:
#   cases:
#     angles:
#       level: fault
#       message: "the joint angles of {subject} are {apart} apart; {most} is the most that cancels"
#     phase:
#       level: fault
#       message: "the yokes of {subject} do not lie in one plane"
#   subject: shafts
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     apart: {dimension: angle, like: angle_front}
#     most: {dimension: angle, like: angle_front}
#   fix: shim the gearbox or the axle until both angles agree; put the shaft together on its marks
#   rulebook: workshop
#   confidence: published
package rules.driveline.joint_pair

import data.rules.driveline.limits.joint_pair as limits

judges contains {"subject": shaft.path, "needs": ["phased", "calc.angle_difference"]} if {
	some shaft in input.shafts
	shaft.joints == "cross"
}

judges contains {"subject": shaft.path, "needs": ["joints"]} if {
	some shaft in input.shafts
	not shaft.joints
}

findings contains {
	"subject": shaft.path,
	"at": "angle_rear",
	"case": "angles",
	"figures": {"apart": shaft.calc.angle_difference, "most": limits.apart.value},
} if {
	some shaft in input.shafts
	shaft.joints == "cross"
	shaft.calc.angle_difference > limits.apart.value
}

findings contains {"subject": shaft.path, "at": "phased", "case": "phase", "figures": {}} if {
	some shaft in input.shafts
	shaft.joints == "cross"
	shaft.phased == false
}
