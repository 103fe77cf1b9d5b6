# METADATA
# title: Connector halves of two kinds
# description: |
#   A connector enters its mate only if the shell size and the keying are
#   alike. A loom that was made for one driveline may be keyed for another on
#   purpose.
# related_resources:
#   - ref: common-practice
#     description: shells mate by size and by key
# custom:
#   cases:
#     size:
#       level: fault
#       message: "{subject} has shell {here}, its mate {there}"
#     key:
#       level: fault
#       message: "{subject} is keyed {here}, its mate {there}"
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: change one half, or make an adaptor loom; never file a key
#   rulebook: workshop
#   confidence: practice
package rules.fittings.connector_key

judges contains {"subject": joint.path, "needs": ["here.size", "there.size", "here.key", "there.key"]} if {
	some joint in input.joints
	joint.kind == "plug"
}

findings contains {
	"subject": joint.path,
	"at": "here.size",
	"also": [joint.there.path],
	"case": "size",
	"figures": {"here": joint.here.size, "there": joint.there.size},
} if {
	some joint in input.joints
	joint.kind == "plug"
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
	joint.kind == "plug"
	joint.here.key != joint.there.key
}
