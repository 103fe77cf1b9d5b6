# METADATA
# title: Shaft bolt too short for its nut
# description: |
#   A bolt whose end stands below the face of its nut holds by a few threads, and
#   the locking part of the nut grips nothing. The shaft comes loose at one end and
#   beats through the floor.
# related_resources:
#   - ref: common-practice
#     description: a bolt fills its nut; a full nut is about eight tenths of its thread high
# custom:
#   level: fault
#   subject: shafts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the bolts of {subject} are {length} long and hold {grip}: their ends do not fill the nut"
#   figures:
#     length: {dimension: length, like: bolts.length}
#     grip: {dimension: length, like: grip}
#   fix: fit bolts a size longer, so that a thread or two show past the nut, and measure the grip with washers and flanges together
#   rulebook: workshop
#   confidence: practice
package rules.driveline.bolt_short

import data.rules.driveline.limits.bolt_short as limits

judges contains {"subject": shaft.path, "needs": ["bolts.nut"]} if some shaft in input.shafts

judges contains {"subject": shaft.path, "needs": ["bolts.length", "grip", "bolts.thread"]} if {
	some shaft in input.shafts
	shaft.bolts.nut
}

findings contains {
	"subject": shaft.path,
	"at": "bolts.length",
	"figures": {"length": shaft.bolts.length, "grip": shaft.grip},
} if {
	some shaft in input.shafts
	shaft.bolts.nut
	shaft.bolts.length < shaft.grip + (limits.nut.value * shaft.bolts.thread.major)
}
