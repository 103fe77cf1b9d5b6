# METADATA
# title: Two halves that seal in different ways
# description: |
#   A cone screws into an O-ring port of the same thread, and a washer-faced
#   union into a port that is chamfered for an O-ring, yet nothing then
#   touches that could seal. What one half needs to seal on must be there on
#   the other.
# related_resources:
#   - ref: sae-j514
#     description: the 37-degree flare and the straight-thread port of a size share one thread
#   - ref: common-practice
#     description: cone, O-ring, washer and taper each need their own seat
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} seals by {here}, and the port it meets by {there}"
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: fit an adaptor whose ends seal as the two halves do, or change one half
#   rulebook: workshop
#   confidence: practice
package rules.fittings.seal_principle

judges contains {"subject": joint.path, "needs": ["here.seal", "there.seal"]} if {
	some joint in input.joints
	joint.kind == "line"
}

findings contains {
	"subject": joint.path,
	"at": "here.seal",
	"also": [joint.there.path],
	"figures": {"here": joint.here.seal, "there": joint.there.seal},
} if {
	some joint in input.joints
	joint.kind == "line"
	joint.here.seal != joint.there.seal
}
