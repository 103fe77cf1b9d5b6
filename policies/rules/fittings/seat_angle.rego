# METADATA
# title: Flared fittings of two seats
# description: |
#   In several sizes the 37-degree and the 45-degree flare share one thread,
#   and so do some brake unions with different flares. The nut runs home, the
#   cones touch on a line, and the joint seeps or lets go once it is hot and
#   shaken.
# related_resources:
#   - ref: sae-j514
#     description: 37-degree flare
#   - ref: sae-j512
#     description: 45-degree flare and inverted flare
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} joins a {here} to a {there}"
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: change one half, or put an adaptor between them, so that both seats are alike
#   rulebook: workshop
#   confidence: practice
package rules.fittings.seat_angle

flares := {"37-flare", "45-flare", "inverted-flare", "bubble-flare"}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.here.form in flares
}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.there.form in flares
}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.here.form
}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.there.form
}

findings contains {
	"subject": joint.path,
	"at": "here.form",
	"also": [joint.there.path],
	"figures": {"here": joint.here.form, "there": joint.there.form},
} if {
	some joint in input.joints
	joint.here.form in flares
	joint.there.form in flares
	joint.here.form != joint.there.form
}
