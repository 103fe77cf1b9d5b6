# METADATA
# title: Clutch or brake hose not made for it
# description: |
#   Clutch lines see the pressure of brake lines. Hose sold for something else swells
#   under the pedal, or is attacked by the fluid: the clutch drags, and the brake
#   pedal goes soft. Brake hose will do for a clutch; the other way round it will not.
# related_resources:
#   - ref: common-practice
#     description: hose that its maker sells for clutch or brake fluid
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is made of {kind}, which is not sold for {service}"
#   figures:
#     kind: {dimension: text}
#     service: {dimension: text}
#   fix: fit hose that its maker sells for brake or clutch fluid
#   rulebook: workshop
#   confidence: practice
package rules.clutch.line_kind

uses := {"clutch fluid": {"clutch fluid", "brake fluid"}, "brake fluid": {"brake fluid"}}

judges contains {"subject": line.path, "needs": ["kind.for"]} if {
	some line in input.lines
	uses[line.service]
	not line.kind.liner == "metal"
}

judges contains {"subject": line.path, "needs": ["service", "kind.for"]} if {
	some line in input.lines
	not line.service
}

findings contains {
	"subject": line.path,
	"at": "kind.for",
	"figures": {"kind": line.hose.kind, "service": line.service},
} if {
	some line in input.lines
	not line.kind.liner == "metal"
	allowed := uses[line.service]
	line.kind.for
	count({use | some use in line.kind.for; use in allowed}) == 0
}
