# METADATA
# title: Eye bolt pulled sideways
# description: |
#   An eye bolt is made to be pulled along its thread. At forty-five degrees a
#   quarter of its limit is left, and past that it bends and comes out.
# related_resources:
#   - ref: bs-4278
#     description: inclined loading, to 45 degrees from the axis
# custom:
#   level: danger
#   subject: lift_points
#   stages: [hoisting, hanging]
#   message: "the eye bolt at {subject} is pulled {pull} off its axis; {most} is the most"
#   figures:
#     pull: {dimension: angle}
#     most: {dimension: angle}
#   fix: use longer legs or a spreader bar, or a swivel hoist ring made for side loads
#   caution: do not lift the driveline from this point
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.eye_pull

import data.rules.lifting.limits.eye_pull as limits

judges contains {"subject": point.path, "needs": ["calc.eye_pull"]} if {
	some point in input.lift_points
	point.thread
}

# Neither an eye bolt nor a bracket: nobody knows what the sling hangs on.
judges contains {"subject": point.path, "needs": ["thread|bolts"]} if some point in input.lift_points

findings contains {
	"subject": point.path,
	"at": "at",
	"figures": {"pull": point.calc.eye_pull, "most": limits.most.value},
} if {
	some point in input.lift_points
	point.thread
	point.calc.eye_pull > limits.most.value
}
