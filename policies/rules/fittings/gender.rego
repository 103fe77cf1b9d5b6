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

gendered := {
	"37-flare", "45-flare", "inverted-flare", "bubble-flare",
	"O-ring-boss", "metric-O-ring", "washer-face", "taper-pipe",
	"dry-break", "push-connector", "connector",
}

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.gender", "there.gender"],
} if {
	some joint in input.joints
	joint.kind in {"line", "plug"}
	joint.here.form in gendered
	joint.there.form in gendered
}

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.gender", "there.gender"],
} if {
	some joint in input.joints
	joint.kind in {"line", "plug"}
	not joint.here.form
}

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.gender", "there.gender"],
} if {
	some joint in input.joints
	joint.kind in {"line", "plug"}
	not joint.there.form
}

findings contains {
	"subject": joint.path,
	"at": "here.gender",
	"also": [joint.there.path],
	"figures": {"gender": joint.here.gender},
} if {
	some joint in input.joints
	joint.here.form in gendered
	joint.there.form in gendered
	joint.kind in {"line", "plug"}
	joint.here.gender == joint.there.gender
}
