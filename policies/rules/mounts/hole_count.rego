# METADATA
# title: Halves of a mount with different numbers of holes
# description: |
#   Where one half has a hole that the other has not, a bolt is left out, and
#   those that remain carry its share.
# related_resources:
#   - ref: common-practice
#     description: both halves of a mount are drilled alike
# custom:
#   level: fault
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has {here} holes and its mate has {there}"
#   figures:
#     here: {dimension: number}
#     there: {dimension: number}
#   fix: make the bracket for this driveline, or put a plate between with both patterns
#   rulebook: workshop
#   confidence: practice
package rules.mounts.hole_count

judges contains {"subject": mount.path, "needs": ["holes.count", "there.holes.count"]} if {
	some mount in input.mounts
}

findings contains {
	"subject": mount.path,
	"at": "holes.count",
	"also": [mount.there.path],
	"figures": {"here": mount.holes.count, "there": mount.there.holes.count},
} if {
	some mount in input.mounts
	mount.holes.count != mount.there.holes.count
}
