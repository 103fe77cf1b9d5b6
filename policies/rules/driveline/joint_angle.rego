# METADATA
# title: Cross joint at too great an angle for its speed
# description: |
#   A cross joint turns its far side faster and slower twice in each turn, the
#   more the greater the angle. At speed that shakes the shaft and hammers the
#   needles. Constant-velocity joints and couplings have limits of their own.
# related_resources:
#   - ref: driveline-manual
#     description: greatest operating angle by shaft speed
# custom:
#   level: fault
#   subject: shafts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} runs at a joint angle of {angle}; at its top speed {most} is the most for a cross joint"
#   figures:
#     angle: {dimension: angle, like: angle_front}
#     most: {dimension: angle, like: angle_front}
#   fix: bring the driveline and the axle nearer to one line, or fit constant-velocity joints
#   rulebook: workshop
#   confidence: published
package rules.driveline.joint_angle

judges contains {"subject": shaft.path, "needs": ["calc.joint_angle", "calc.joint_angle_most"]} if {
	some shaft in input.shafts
	shaft.joints == "cross"
}

judges contains {"subject": shaft.path, "needs": ["joints"]} if {
	some shaft in input.shafts
	not shaft.joints
}

findings contains {
	"subject": shaft.path,
	"at": "angle_front",
	"figures": {"angle": shaft.calc.joint_angle, "most": shaft.calc.joint_angle_most},
} if {
	some shaft in input.shafts
	shaft.joints == "cross"
	shaft.calc.joint_angle > shaft.calc.joint_angle_most
}
