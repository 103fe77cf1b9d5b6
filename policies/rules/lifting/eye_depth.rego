# METADATA
# title: Eye bolt too shallow in its metal
# description: |
#   An eye bolt is pulled sideways as well as along its thread. In a soft metal it
#   needs about twice the depth that it needs in steel.
# related_resources:
#   - ref: lifting-eye-instruction
#     description: p. 5, depth in diameters by metal
# custom:
#   level: danger
#   subject: lift_points
#   stages: [hoisting, hanging]
#   message: "{subject} has {depth} diameters of thread in {metal}; {needed} are asked"
#   figures:
#     depth: {dimension: number}
#     needed: {dimension: number}
#     metal: {dimension: text}
#   fix: use a deeper hole and a longer shank, or a bracket with several bolts
#   caution: do not lift the driveline from this point
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.eye_depth

judges contains {"subject": point.path, "needs": ["into", "calc.depth_diameters", "calc.depth_needed"]} if {
	some point in input.lift_points
	point.thread
}

# Neither an eye bolt nor a bracket: nobody knows what the sling hangs on.
judges contains {"subject": point.path, "needs": ["thread|bolts"]} if some point in input.lift_points

findings contains {
	"subject": point.path,
	"at": "depth",
	"figures": {
		"depth": point.calc.depth_diameters,
		"needed": point.calc.depth_needed,
		"metal": point.into,
	},
} if {
	some point in input.lift_points
	point.calc.depth_diameters < point.calc.depth_needed
}
