# METADATA
# title: Propshaft near its whirling speed
# description: |
#   The computed whirling speed is that of a perfect tube. A real shaft, with worn
#   splines and heavy joints, begins to shake well below it.
# related_resources:
#   - ref: shigley-9e
#     description: section 7-6, critical speed of a uniform shaft on simple supports
#   - ref: common-practice
#     description: three quarters of the computed speed
# custom:
#   level: advice
#   subject: shafts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} turns at {share} of its whirling speed in top gear at the limiter; {most} is usual"
#   figures:
#     share: {dimension: ratio, unit: "%"}
#     most: {dimension: ratio, unit: "%"}
#   fix: fit a thicker tube, or a shorter shaft with a centre bearing
#   rulebook: workshop
#   confidence: practice
package rules.driveline.whirl_margin

import data.rules.driveline.limits.whirl_margin as limits

judges contains {"subject": shaft.path, "needs": ["calc.whirling_share"]} if some shaft in input.shafts

findings contains {
	"subject": shaft.path,
	"at": "tube",
	"figures": {"share": shaft.calc.whirling_share, "most": limits.share.value},
} if {
	some shaft in input.shafts
	shaft.calc.whirling_share > limits.share.value
	shaft.calc.whirling_share < 1
}
