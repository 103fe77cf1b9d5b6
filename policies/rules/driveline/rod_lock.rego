# METADATA
# title: Rod end that nothing keeps from turning
# description: |
#   A rod between two ends with like threads unscrews itself as it shakes. A
#   gear rod then loses its adjustment, a throttle rod its end.
# related_resources:
#   - ref: common-practice
#     description: each rod end has its lock nut
# custom:
#   level: fault
#   subject: rods
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "nothing keeps the ends of {subject} from unscrewing"
#   fix: fit a jam nut at each rod end and mark it with paint
#   rulebook: workshop
#   confidence: practice
package rules.driveline.rod_lock

judges contains {"subject": rod.path, "needs": ["lock"]} if some rod in input.rods

findings contains {"subject": rod.path, "at": "lock", "figures": {}} if {
	some rod in input.rods
	rod.lock == "unlocked"
}

findings contains {"subject": rod.path, "at": "lock", "figures": {}} if {
	some rod in input.rods
	"lock" in rod.none
}
