# METADATA
# title: Sling leg too flat
# description: |
#   The flatter a leg lies, the harder it pulls: at thirty degrees each of two
#   carries the whole load, and below that the pull runs away. The lift points
#   are drawn together as well.
# related_resources:
#   - ref: osha-sling-guidance
#     description: no leg under 30 degrees from the horizontal
# custom:
#   level: danger
#   subject: lift_points
#   stages: [hoisting, hanging]
#   message: "the leg to {subject} lies {angle} from the horizontal; {least} is the least"
#   figures:
#     angle: {dimension: angle}
#     least: {dimension: angle}
#   fix: use longer legs or a spreader bar, or hang the hook higher
#   caution: do not lift on these legs
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.leg_angle

import data.rules.lifting.limits.leg_angle as limits

judges contains {"subject": point.path, "needs": ["calc.leg_angle"]} if some point in input.lift_points

findings contains {
	"subject": point.path,
	"at": "at",
	"figures": {"angle": point.calc.leg_angle, "least": limits.least.value},
} if {
	some point in input.lift_points
	point.calc.leg_angle < limits.least.value
}
