# METADATA
# title: Hose clamped on a plain tube
# description: |
#   A clamp holds a hose by pressing it down behind a bead or barb. On a
#   plain tube nothing keeps it from walking off under pressure, and it is
#   hot fuel, oil or water that then comes out.
# related_resources:
#   - ref: common-practice
#     description: a hose is not clamped on a tube end without a bead or barb
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} clamps a hose on a tube that has no bead or barb"
#   fix: roll a bead on the tube, or fit an end that has one
#   rulebook: workshop
#   confidence: practice
package rules.fittings.bead_missing

wet := {"fuel", "engine oil", "gearbox oil", "axle oil", "coolant", "steering fluid", "charge air"}

judges contains {"subject": joint.path, "needs": ["here.form", "there.form"]} if {
	some joint in input.joints
	joint.kind == "line"
	joint.service in wet
}

judges contains {"subject": joint.path, "needs": ["service"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.service
}

findings contains {"subject": joint.path, "at": "here.form", "also": [joint.there.path], "figures": {}} if {
	some joint in input.joints
	joint.service in wet
	joint.here.form == "hose"
	joint.there.form == "plain-tube"
}

findings contains {"subject": joint.path, "at": "here.form", "also": [joint.there.path], "figures": {}} if {
	some joint in input.joints
	joint.service in wet
	joint.here.form == "plain-tube"
	joint.there.form == "hose"
}
