# METADATA
# title: Sling leg over its limit
# description: |
#   Legs share a load by where the centre of mass lies under the hook, not
#   equally. The one that lies nearer carries more than its part, and that one
#   counts.
# related_resources:
#   - ref: 29-cfr-1926.251
#     description: "(a)(2): not loaded beyond the rated load"
#   - ref: university-rigging-guide
#     description: unequal legs
# custom:
#   level: danger
#   subject: lift_points
#   stages: [hoisting]
#   message: "the leg to {subject} carries {tension}; the sling is rated for {rated}"
#   figures:
#     tension: {dimension: mass, like: tackle.rated}
#     rated: {dimension: mass, like: tackle.rated}
#   fix: use a heavier sling, or set the leveller so that the legs pull alike
#   caution: do not lift on this sling
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.lifting.leg_tension

judges contains {"subject": point.path, "needs": ["tackle.rated", "calc.tension"]} if some point in input.lift_points

findings contains {
	"subject": point.path,
	"at": "tackle.rated",
	"figures": {"tension": point.calc.tension, "rated": point.tackle.rated},
} if {
	some point in input.lift_points
	point.calc.tension > point.tackle.rated
}
