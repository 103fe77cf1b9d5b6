# METADATA
# title: Lift point over its marked limit
# description: |
#   What is stamped on an eye or bracket holds for a straight pull. The leg
#   that pulls at it can carry more than half the load, and pulls at an angle
#   besides.
# related_resources:
#   - ref: 29-cfr-1926.251
#     description: "(a)(2): not loaded beyond the rated load"
# custom:
#   level: danger
#   subject: lift_points
#   stages: [hoisting, hanging]
#   message: "{subject} is pulled with {tension}; {rated} is marked on it, for a straight pull"
#   figures:
#     tension: {dimension: mass, like: rated}
#     rated: {dimension: mass, like: rated}
#   fix: lift from a point with a higher limit, or set the hook so that the legs pull alike
#   caution: do not lift the driveline from this point
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.point_load

judges contains {"subject": point.path, "needs": ["rated", "calc.tension"]} if some point in input.lift_points

findings contains {
	"subject": point.path,
	"at": "rated",
	"figures": {"tension": point.calc.tension, "rated": point.rated},
} if {
	some point in input.lift_points
	point.calc.tension > point.rated
}
