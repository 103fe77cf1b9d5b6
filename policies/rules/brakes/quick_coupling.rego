# METADATA
# title: Quick coupling in the brakes
# description: |
#   A coupling that is made to let go quickly can let go, or let in air, in
#   the one circuit where neither may happen. It is a fine thing on clutch,
#   oil and fuel; the rules allow it on every line but those of the brakes.
# related_resources:
#   - ref: fia-253
#     description: art. 3.2, self-sealing connectors on all lines except brake lines
#   - ref: fia-283
#     description: art. 3.2
# custom:
#   level: danger
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has a {form} in a brake line"
#   figures:
#     form: {dimension: text}
#   fix: make the joint with a flared union, and leave the brakes closed in a swap
#   caution: do not drive it; the brakes can come apart
#   rulebook: workshop
#   confidence: published
#   basis: hazard
package rules.brakes.quick_coupling

quick := {"dry-break", "push-connector"}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.kind == "line"
	joint.service == "brake fluid"
}

judges contains {"subject": joint.path, "needs": ["service"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.service
}

findings contains {
	"subject": joint.path,
	"at": "here.form",
	"also": [joint.there.path],
	"figures": {"form": joint.here.form},
} if {
	some joint in input.joints
	joint.kind == "line"
	joint.service == "brake fluid"
	joint.here.form in quick
}

findings contains {
	"subject": joint.path,
	"at": "there.form",
	"also": [joint.there.path],
	"figures": {"form": joint.there.form},
} if {
	some joint in input.joints
	joint.kind == "line"
	joint.service == "brake fluid"
	not joint.here.form == joint.there.form
	joint.there.form in quick
}
