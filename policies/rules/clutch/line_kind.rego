# METADATA
# title: Clutch hose not made for it
# description: |
#   Clutch lines see the pressure of brake lines. Hose sold for something
#   else swells under the pedal, so that the clutch drags, or is attacked by
#   the fluid.
# related_resources:
#   - ref: common-practice
#     description: hose that its maker sells for clutch or brake fluid
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is made of {kind}, which is not sold for clutch or brake fluid"
#   figures:
#     kind: {dimension: text}
#   fix: fit hose that its maker sells for brake or clutch fluid
#   rulebook: workshop
#   confidence: practice
package rules.clutch.line_kind

judges contains {"subject": line.path, "needs": ["kind.for"]} if {
	some line in input.lines
	line.service == "clutch fluid"
	not line.kind.liner == "metal"
}

judges contains {"subject": line.path, "needs": ["service", "kind.for"]} if {
	some line in input.lines
	not line.service
}

findings contains {"subject": line.path, "at": "kind.for", "figures": {"kind": line.hose.kind}} if {
	some line in input.lines
	line.service == "clutch fluid"
	not line.kind.liner == "metal"
	line.kind.for
	count([1 | some use in line.kind.for; use in {"clutch fluid", "brake fluid"}]) == 0
}
