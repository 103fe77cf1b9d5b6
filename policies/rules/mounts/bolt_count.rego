# METADATA
# title: Mount with a bolt left out
# description: |
#   A hole that both halves have and no bolt fills leaves its load to the others.
# related_resources:
#   - ref: common-practice
#     description: each hole that both halves have gets its bolt
# custom:
#   level: fault
#   subject: mounts
#   stages: [joined, filled, first_start, event]
#   message: "{subject} has {bolts} bolts for {holes} holes"
#   figures:
#     bolts: {dimension: number}
#     holes: {dimension: number}
#   fix: fit the bolts that are missing
#   rulebook: workshop
#   confidence: practice
package rules.mounts.bolt_count

judges contains {"subject": mount.path, "needs": ["bolts.count", "holes.count", "there.holes.count"]} if {
	some mount in input.mounts
}

findings contains {
	"subject": mount.path,
	"at": "bolts.count",
	"figures": {"bolts": mount.bolts.count, "holes": mount.holes.count},
} if {
	some mount in input.mounts
	mount.bolts.count < mount.holes.count
	mount.bolts.count < mount.there.holes.count
}
