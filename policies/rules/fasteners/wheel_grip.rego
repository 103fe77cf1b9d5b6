# METADATA
# title: Wheel nut on too little thread
# description: |
#   A wheel nut that has less thread than its stud is thick strips under the
#   torque or under the first kerb. Spacers and thicker wheels eat thread
#   unseen.
# related_resources:
#   - ref: common-practice
#     description: thread engaged of at least one diameter
# custom:
#   level: fault
#   subject: fastenings
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has {engaged} of thread engaged, less than the {stud} is thick"
#   figures:
#     engaged: {dimension: length, like: engaged}
#     stud: {dimension: text}
#   fix: fit longer studs or bolts, or take out the spacer
#   rulebook: workshop
#   confidence: practice
package rules.fasteners.wheel_grip

import data.lib.wheels

judges contains {"subject": fastening.path, "needs": ["engaged", "thread"]} if {
	some fastening in input.fastenings
	wheels.road(fastening.holds)
}

judges contains {"subject": fastening.path, "needs": ["holds"]} if {
	some fastening in input.fastenings
	not fastening.holds
}

findings contains {
	"subject": fastening.path,
	"at": "engaged",
	"figures": {"engaged": fastening.engaged, "stud": fastening.thread.text},
} if {
	some fastening in input.fastenings
	wheels.road(fastening.holds)
	fastening.engaged < fastening.thread.major
}
