# METADATA
# title: Towing eye behind something
# description: |
#   Nobody takes a panel off in a gravel trap. After a swap it is a cooler, a
#   duct or a tray that has come to stand before the eye.
# related_resources:
#   - ref: dmsb-handbook
#     description: "art. 26.1: flush with the body or beyond it, within reach"
# custom:
#   level: fault
#   subject: tow_eyes
#   stages: [event]
#   message: "{subject} is behind {what}"
#   figures:
#     what: {dimension: text}
#   fix: move what covers it, or fit a strap that comes out beside it
#   rulebook: workshop
#   confidence: published
package rules.recovery.eye_covered

judges contains {"subject": eye.path, "needs": ["behind"]} if some eye in input.tow_eyes

findings contains {"subject": eye.path, "at": "behind", "figures": {"what": concat(", ", eye.behind)}} if {
	some eye in input.tow_eyes
	some _ in eye.behind
}
