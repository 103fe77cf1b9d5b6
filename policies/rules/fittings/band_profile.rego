# METADATA
# title: V-band flanges of two kinds
# description: |
#   A V-band closes only on two flanges of one profile and one outside
#   diameter. Tube size says nothing of either: two 3 inch flanges may
#   differ, and then the band bottoms before the faces meet, or rides up and
#   lets go.
# related_resources:
#   - ref: aero-engine-v-band
#     description: flanges of one part family, faces touching before the band is fitted
# custom:
#   cases:
#     outside:
#       level: fault
#       message: "{subject} is {here} across its flange, the other half {there}"
#     profile:
#       level: fault
#       message: "{subject} has the profile {here_family}, the other half {there_family}"
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: length}
#     there: {dimension: length}
#     here_family: {dimension: text}
#     there_family: {dimension: text}
#   fix: measure both flanges across the outside and look at their faces; change one flange, not the band
#   rulebook: workshop
#   confidence: practice
package rules.fittings.band_profile

import data.rules.fittings.limits.band_profile as limits

judges contains {
	"subject": joint.path,
	"needs": ["here.outside", "there.outside", "here.family", "there.family"],
} if {
	some joint in input.joints
	joint.here.form == "V-band"
}

judges contains {
	"subject": joint.path,
	"needs": ["here.outside", "there.outside", "here.family", "there.family"],
} if {
	some joint in input.joints
	joint.there.form == "V-band"
}

# A half of an exhaust pipe whose form nobody wrote may be one.
judges contains {"subject": joint.path, "needs": ["here.form"]} if {
	some joint in input.joints
	joint.kind == "pipe"
	not joint.here.form
}

judges contains {"subject": joint.path, "needs": ["there.form"]} if {
	some joint in input.joints
	joint.kind == "pipe"
	not joint.there.form
}

findings contains {
	"subject": joint.path,
	"at": "here.outside",
	"also": [joint.there.path],
	"case": "outside",
	"figures": {"here": joint.here.outside, "there": joint.there.outside},
} if {
	some joint in input.joints
	joint.here.form == "V-band"
	differs(joint.here.outside, joint.there.outside)
}

findings contains {
	"subject": joint.path,
	"at": "here.outside",
	"also": [joint.there.path],
	"case": "outside",
	"figures": {"here": joint.here.outside, "there": joint.there.outside},
} if {
	some joint in input.joints
	joint.there.form == "V-band"
	differs(joint.here.outside, joint.there.outside)
}

findings contains {
	"subject": joint.path,
	"at": "here.family",
	"also": [joint.there.path],
	"case": "profile",
	"figures": {"here_family": joint.here.family, "there_family": joint.there.family},
} if {
	some joint in input.joints
	joint.here.form == "V-band"
	joint.here.family != joint.there.family
}

findings contains {
	"subject": joint.path,
	"at": "here.family",
	"also": [joint.there.path],
	"case": "profile",
	"figures": {"here_family": joint.here.family, "there_family": joint.there.family},
} if {
	some joint in input.joints
	joint.there.form == "V-band"
	joint.here.family != joint.there.family
}

differs(one, other) if one > other + limits.off.value

differs(one, other) if other > one + limits.off.value
