# METADATA
# title: Towing eye too small
# description: |
#   A hook that does not go through the eye goes round a wishbone instead.
# related_resources:
#   - ref: dmsb-handbook
#     description: "art. 26.1: a 60 mm pin passes"
#   - ref: motorsport-uk-ncr
#     description: "Q19.1.3 in the edition of 2017: 60 mm inside"
# custom:
#   level: fault
#   subject: tow_eyes
#   stages: [event]
#   message: "{subject} is {inside} inside; {least} is asked"
#   figures:
#     inside: {dimension: length, like: inside}
#     least: {dimension: length, like: inside}
#   fix: fit a larger eye or a strap to load-bearing structure
#   rulebook: national
#   confidence: published
package rules.recovery.eye_size

import data.rules.recovery.limits.eye_size as limits

judges contains {"subject": eye.path, "needs": ["inside"]} if some eye in input.tow_eyes

findings contains {
	"subject": eye.path,
	"at": "inside",
	"figures": {"inside": eye.inside, "least": limits.least.value},
} if {
	some eye in input.tow_eyes
	eye.inside < limits.least.value
}
