# METADATA
# title: Dolly under more than it is rated for
# description: |
#   Castors of their own rating do not make a frame that bears them all. A dolly
#   made for a lighter driveline bends between its castors, and what stands on it
#   goes over the side.
# related_resources:
#   - ref: 29-cfr-1926.251
#     description: "(a)(2): not loaded beyond the rated load"
# custom:
#   level: danger
#   subject: support
#   stages: [hoisting]
#   message: "the driveline weighs {mass}; dolly {dolly} is rated for {rated}"
#   figures:
#     mass: {dimension: mass, like: carrier.rated}
#     rated: {dimension: mass, like: carrier.rated}
#     dolly: {dimension: text}
#   fix: set it down on a dolly rated for it
#   caution: do not set the driveline down on this dolly
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.dolly.load

judges contains {"subject": support.path, "needs": ["dolly"]} if some support in input.support

judges contains {"subject": support.path, "needs": ["carrier.rated", "weighed.mass"]} if {
	some support in input.support
	support.dolly
}

findings contains {
	"subject": support.path,
	"at": "carrier.rated",
	"figures": {"mass": support.weighed.mass, "rated": support.carrier.rated, "dolly": support.dolly},
} if {
	some support in input.support
	support.weighed.mass > support.carrier.rated
}
