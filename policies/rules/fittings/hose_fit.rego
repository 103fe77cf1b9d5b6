# METADATA
# title: Hose and spigot of two sizes
# description: |
#   A hose that is clamped down on a spigot too small for it folds under the
#   clamp and weeps; one that is forced over a spigot too big for it tears or
#   creeps off when it is hot.
# related_resources:
#   - ref: common-practice
#     description: a hose is bought for the outside diameter of its spigot
# custom:
#   cases:
#     diameter:
#       level: fault
#       message: "{subject} is {here}; what it is clamped to is {there}"
#     dash:
#       level: fault
#       message: "{subject} is dash {here_dash}; what it is clamped to is dash {there_dash}"
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: length}
#     there: {dimension: length}
#     here_dash: {dimension: number}
#     there_dash: {dimension: number}
#   fix: use a hose or a stepped joiner of the right size; do not shim or stretch it
#   rulebook: workshop
#   confidence: practice
package rules.fittings.hose_fit

import data.rules.fittings.limits.hose_fit as limits

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.diameter|here.dash", "there.diameter|there.dash"],
} if {
	some joint in input.joints
	joint.way in {"clamp", "not said"}
}

findings contains {
	"subject": joint.path,
	"at": "here.size",
	"also": [joint.there.path],
	"case": "diameter",
	"figures": {"here": joint.here.diameter, "there": joint.there.diameter},
} if {
	some joint in input.joints
	joint.way == "clamp"
	differ(joint.here.diameter, joint.there.diameter)
}

findings contains {
	"subject": joint.path,
	"at": "here.size",
	"also": [joint.there.path],
	"case": "dash",
	"figures": {"here_dash": joint.here.dash, "there_dash": joint.there.dash},
} if {
	some joint in input.joints
	joint.way == "clamp"
	joint.here.dash != joint.there.dash
}

differ(one, other) if one > other + limits.off.value

differ(one, other) if other > one + limits.off.value
