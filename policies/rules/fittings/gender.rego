# METADATA
# title: Two halves of one gender
# description: |
#   Two male or two female halves do not go together. One of them was written
#   down, ordered or built the wrong way round.
# related_resources:
#   - ref: common-practice
#     description: one half enters the other
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} and the port it meets are both {gender}"
#   figures:
#     gender: {dimension: text}
#   fix: look at both halves again; if they are alike, change one end or add a union between them
#   rulebook: workshop
#   confidence: practice
package rules.fittings.gender

# Anything else is clamped, or its halves seal in different ways. A banjo is an eye
# and a bolt, and both may be called either.
gendered := {"thread", "coupling", "connector", "not said"}

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.gender", "there.gender"],
} if {
	some joint in input.joints
	joint.way in gendered
	not joint.here.form == "banjo"
	not joint.there.form == "banjo"
}

findings contains {
	"subject": joint.path,
	"at": "here.gender",
	"also": [joint.there.path],
	"figures": {"gender": joint.here.gender},
} if {
	some joint in input.joints
	joint.way in gendered
	not joint.here.form == "banjo"
	not joint.there.form == "banjo"
	joint.here.gender == joint.there.gender
}
