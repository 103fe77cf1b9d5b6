# METADATA
# title: Gap smaller than the engine rocks
# description: |
#   With the engine at rest everything clears. Under torque it rocks on its
#   rubbers, and what stands nearer than that is hit, rubbed through or
#   dented.
# related_resources:
#   - ref: common-practice
#     description: each gap is wider than the movement of the engine
# custom:
#   level: fault
#   subject: gaps
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is {gap}; the engine rocks {rocks} on its mounts"
#   figures:
#     gap: {dimension: length, like: is}
#     rocks: {dimension: length, like: is}
#   fix: make room, or fit stiffer mounts or a torque stay; then look with the engine pulled over both ways
#   rulebook: workshop
#   confidence: practice
package rules.mounts.rock_room

judges contains {"subject": gap.path, "needs": ["is", "fit.rocks"]} if {
	some gap in input.gaps
	gap.moves
}

judges contains {"subject": gap.path, "needs": ["between"]} if {
	some gap in input.gaps
	not gap.between
}

findings contains {
	"subject": gap.path,
	"at": "is",
	"figures": {"gap": gap.is, "rocks": gap.fit.rocks},
} if {
	some gap in input.gaps
	gap.moves
	gap.is < gap.fit.rocks
}
