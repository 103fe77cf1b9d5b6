# METADATA
# title: Banjo without its washers
# description: |
#   A banjo seals on two soft washers, one on either side of the eye. Without
#   them it leaks at once; on old ones it leaks later.
# related_resources:
#   - ref: common-practice
#     description: two new washers for each banjo
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is a banjo and has no washers"
#   fix: fit two new washers of the size of the bolt, one on either side
#   rulebook: workshop
#   confidence: practice
package rules.fittings.washers

judges contains {"subject": joint.path, "needs": ["meet.washers"]} if {
	some joint in input.joints
	joint.here.form == "banjo"
}

judges contains {"subject": joint.path, "needs": ["here.form"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.here.form
}

findings contains {"subject": joint.path, "at": "meet.washers", "figures": {}} if {
	some joint in input.joints
	joint.here.form == "banjo"
	"washers" in joint.meet.none
}
