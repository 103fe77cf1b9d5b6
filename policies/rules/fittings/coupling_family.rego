# METADATA
# title: Coupling halves of two kinds
# description: |
#   Dry-break and push-on halves mate only within one series, one size and
#   one key. Halves of two series may seem to go in, and neither latch nor
#   seal.
# related_resources:
#   - ref: iso-7241
#     description: series A and series B do not mate in any size
#   - ref: sae-j2044
#     description: male tube ends by size
# custom:
#   cases:
#     series:
#       level: fault
#       message: "{subject} is of series {here}, the half it meets of series {there}"
#     size:
#       level: fault
#       message: "{subject} is {here}, the half it meets {there}"
#     key:
#       level: fault
#       message: "{subject} has key {here}, the half it meets key {there}"
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: change one half for the series, size and key of the other
#   rulebook: workshop
#   confidence: practice
package rules.fittings.coupling_family

judges contains {
	"subject": joint.path,
	"needs": ["here.form", "there.form", "here.family", "there.family", "here.size", "there.size"],
} if {
	some joint in input.joints
	joint.way in {"coupling", "not said"}
}

findings contains {
	"subject": joint.path,
	"at": "here.family",
	"also": [joint.there.path],
	"case": "series",
	"figures": {"here": joint.here.family, "there": joint.there.family},
} if {
	some joint in input.joints
	joint.way == "coupling"
	joint.here.family != joint.there.family
}

findings contains {
	"subject": joint.path,
	"at": "here.size",
	"also": [joint.there.path],
	"case": "size",
	"figures": {"here": joint.here.size, "there": joint.there.size},
} if {
	some joint in input.joints
	joint.way == "coupling"
	joint.here.size != joint.there.size
}

findings contains {
	"subject": joint.path,
	"at": "here.key",
	"also": [joint.there.path],
	"case": "key",
	"figures": {"here": joint.here.key, "there": joint.there.key},
} if {
	some joint in input.joints
	joint.way == "coupling"
	joint.here.key != joint.there.key
}
