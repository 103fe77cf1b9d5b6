# METADATA
# title: Sliding joint near its end
# description: |
#   The axle moves, the engine rocks, and another driveline stands a little
#   further forward or back. A shaft that bottoms bends a flange or bursts a
#   housing; one that comes out lets go at speed.
# related_resources:
#   - ref: common-practice
#     description: ten millimetres left either way at ride height, beside the travel of the axle
# custom:
#   cases:
#     inwards:
#       level: fault
#       message: "{subject} can go in by {left} before it bottoms; {least} is the least"
#     outwards:
#       level: fault
#       message: "{subject} can come out by {left} before it comes short; {least} is the least"
#   subject: shafts
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     left: {dimension: length, like: slip}
#     least: {dimension: length, like: slip}
#   fix: have the shaft made longer or shorter, or move the driveline; then try it at full bump and full droop
#   rulebook: workshop
#   confidence: practice
package rules.driveline.slip_range

import data.rules.driveline.limits.slip_range as limits

judges contains {"subject": shaft.path, "needs": ["slip"]} if some shaft in input.shafts

findings contains {
	"subject": shaft.path,
	"at": "slip",
	"case": "inwards",
	"figures": {"left": 0 - shaft.slip[0], "least": limits.least.value},
} if {
	some shaft in input.shafts
	0 - shaft.slip[0] < limits.least.value
}

findings contains {
	"subject": shaft.path,
	"at": "slip",
	"case": "outwards",
	"figures": {"left": shaft.slip[1], "least": limits.least.value},
} if {
	some shaft in input.shafts
	shaft.slip[1] < limits.least.value
}
