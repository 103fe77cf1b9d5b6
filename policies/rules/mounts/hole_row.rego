# METADATA
# title: Hole pattern turned a quarter
# description: |
#   Two rows of equal holes that lie along different axes do not meet, however
#   well their figures agree.
# related_resources:
#   - ref: common-practice
#     description: rows of holes lie along one axis
# custom:
#   level: fault
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has its holes in a row {here}, and its mate {there}"
#   figures:
#     here: {dimension: text}
#     there: {dimension: text}
#   fix: turn the bracket's pattern, or look again along which axis each row was measured
#   rulebook: workshop
#   confidence: practice
package rules.mounts.hole_row

# One hole, a circle and a square lie along no axis.
judges contains {"subject": mount.path, "needs": ["holes.along", "there.holes.along"]} if {
	some mount in input.mounts
	not mount.holes.count == 1
	not mount.holes.circle
	not mount.holes.apart == mount.holes.wide
}

findings contains {
	"subject": mount.path,
	"at": "holes.along",
	"also": [mount.there.path],
	"figures": {"here": mount.holes.along, "there": mount.there.holes.along},
} if {
	some mount in input.mounts
	not mount.holes.count == 1
	not mount.holes.circle
	not mount.holes.apart == mount.holes.wide
	mount.holes.along != mount.there.holes.along
}
