# METADATA
# title: Brake joint that the swap opens
# description: |
#   A brake line from the car to the driveline has to be parted for every
#   swap, and each time it may be left loose or with air in it. What works the
#   brakes belongs on the car.
# related_resources:
#   - ref: common-practice
#     description: the brakes stay closed when a driveline is changed
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} leads the brakes across to the driveline, so that each swap opens them"
#   fix: mount the part that needs it on the car; if that cannot be, bleed and prove the brakes after each swap
#   rulebook: workshop
#   confidence: practice
package rules.brakes.left_shut

judges contains {"subject": joint.path, "needs": []} if {
	some joint in input.joints
	joint.service == "brake fluid"
}

judges contains {"subject": joint.path, "needs": ["service"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.service
}

findings contains {"subject": joint.path, "at": "meet.port", "also": [joint.there.path], "figures": {}} if {
	some joint in input.joints
	joint.service == "brake fluid"
	joint.boundary
}
