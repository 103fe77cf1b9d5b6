# METADATA
# title: Lift point below the centre of mass
# description: |
#   A load that hangs from points below its centre of mass is top-heavy: it rolls
#   over in the sling as soon as it is free of its mounts.
# related_resources:
#   - ref: university-rigging-guide
#     description: attachment points lie above the centre of gravity
#   - ref: navedtra-14081
#     description: p. 13-28, slings and centre of gravity
# custom:
#   level: danger
#   subject: lift_points
#   stages: [hoisting, hanging]
#   message: "{subject} lies {below} below the driveline's centre of mass"
#   figures:
#     below: {dimension: length, like: at}
#   fix: lift from points on the cylinder head or above it, or fit a lifting frame that puts them there
#   caution: do not lift the driveline from this point
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.points_high

judges contains {"subject": point.path, "needs": ["calc.above_mass"]} if some point in input.lift_points

findings contains {
	"subject": point.path,
	"at": "at",
	"figures": {"below": abs(point.calc.above_mass)},
} if {
	some point in input.lift_points
	point.calc.above_mass < 0
}
