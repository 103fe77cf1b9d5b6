# METADATA
# title: Torque that no wrench in the shop reaches
# description: |
#   A torque wrench is true only within its range. Below it nothing clicks in
#   time, above it someone guesses.
# related_resources:
#   - ref: common-practice
#     description: a torque wrench is used within its range
# custom:
#   level: advice
#   subject: fastenings
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "no torque wrench in the shop reaches the {torque} of {subject}"
#   figures:
#     torque: {dimension: torque, like: torque}
#   fix: borrow or buy one whose range holds it
#   rulebook: workshop
#   confidence: practice
package rules.fasteners.wrench_range

judges contains {"subject": fastening.path, "needs": []} if some fastening in input.fastenings

findings contains {"subject": fastening.path, "at": "torque", "figures": {"torque": fastening.torque}} if {
	some fastening in input.fastenings
	fastening.wrench == false
}
