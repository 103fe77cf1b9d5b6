# METADATA
# title: Propshaft at its whirling speed
# description: |
#   At its whirling speed a shaft bows out and does not come back: it breaks, and
#   what is left flails beside driver and fuel lines. The figure is that of a
#   straight, balanced tube on stiff supports; wear, slip and heavy joints lower
#   the true one.
# related_resources:
#   - ref: shigley-9e
#     description: section 7-6, critical speed of a uniform shaft on simple supports
# custom:
#   level: danger
#   subject: shafts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} turns {top} in top gear at the limiter; it whirls at {whirling}"
#   figures:
#     top: {dimension: rotational_speed, like: engine.rev_limit}
#     whirling: {dimension: rotational_speed, like: engine.rev_limit}
#   fix: fit a thicker tube, or a shorter shaft with a centre bearing
#   caution: do not drive the car at speed on this shaft
#   rulebook: workshop
#   confidence: published
#   basis: threshold
package rules.driveline.whirl_speed

judges contains {"subject": shaft.path, "needs": ["calc.top_speed", "calc.whirling"]} if some shaft in input.shafts

findings contains {
	"subject": shaft.path,
	"at": "tube",
	"figures": {"top": shaft.calc.top_speed, "whirling": shaft.calc.whirling},
} if {
	some shaft in input.shafts
	shaft.calc.top_speed >= shaft.calc.whirling
}
