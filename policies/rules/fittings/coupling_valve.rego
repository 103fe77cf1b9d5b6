# METADATA
# title: Dry-break half that does not shut
# description: |
#   A dry-break parts without a spill only if both halves shut themselves. A
#   half without a valve lets its line run empty, and air into the circuit.
# related_resources:
#   - ref: common-practice
#     description: both halves of a dry-break have valves
# custom:
#   level: advice
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "a half of the dry-break at {subject} has no valve"
#   fix: fit a valved half, or have a cap ready and drain that side first
#   rulebook: workshop
#   confidence: practice
package rules.fittings.coupling_valve

judges contains {"subject": joint.path, "needs": ["here.valved", "there.valved"]} if {
	some joint in input.joints
	joint.here.form == "dry-break"
}

judges contains {"subject": joint.path, "needs": ["here.form"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.here.form
}

findings contains {"subject": joint.path, "at": "here.valved", "figures": {}} if {
	some joint in input.joints
	joint.here.form == "dry-break"
	joint.here.valved == false
}

findings contains {"subject": joint.path, "at": "there.valved", "also": [half], "figures": {}} if {
	some joint in input.joints
	joint.here.form == "dry-break"
	joint.there.valved == false
	half := joint.there.path
}
