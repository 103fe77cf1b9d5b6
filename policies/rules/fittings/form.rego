# METADATA
# title: Two halves of different forms
# description: |
#   An exhaust flange, a shaft end or a plug joins only its own kind. Two
#   forms that do not go together mean that a piece is missing between them.
# related_resources:
#   - ref: common-practice
#     description: two halves of one form
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is a {here}, and what it meets a {there}"
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: make or order the piece that goes between, or change one half
#   rulebook: workshop
#   confidence: practice
package rules.fittings.form

kinds := {"pipe", "plug", "shaft"}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.kind in kinds
}

findings contains {
	"subject": joint.path,
	"at": "here.form",
	"also": [joint.there.path],
	"figures": {"here": joint.here.form, "there": joint.there.form},
} if {
	some joint in input.joints
	joint.kind in kinds
	joint.here.form != joint.there.form
	{joint.here.form, joint.there.form} != {"slip", "plain-tube"}
}
