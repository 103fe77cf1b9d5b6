# METADATA
# title: Halves of a mount drilled to different spacings
# description: |
#   Bolts that have to be forced through two patterns bend, wear their holes and
#   start loose. A hole opened up to suit them lets the driveline walk.
# related_resources:
#   - ref: common-practice
#     description: clearance of a bolt in a medium hole
# custom:
#   level: fault
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is drilled {here} apart and its mate {there}"
#   figures:
#     here: {dimension: length, like: holes.apart}
#     there: {dimension: length, like: there.holes.apart}
#   fix: make the bracket for this driveline; do not open up its holes
#   rulebook: workshop
#   confidence: practice
package rules.mounts.hole_spacing

import data.rules.mounts.limits.hole_spacing as limits

# Only like can be compared with like: what one half gives, the other must give.
judges contains {"subject": mount.path, "needs": ["holes.apart|holes.circle", "there.holes.apart|there.holes.circle"]} if {
	some mount in input.mounts
	not mount.holes.count == 1
}

judges contains {"subject": mount.path, "needs": ["there.holes.apart"]} if {
	some mount in input.mounts
	not mount.holes.count == 1
	mount.holes.apart
}

judges contains {"subject": mount.path, "needs": ["there.holes.circle"]} if {
	some mount in input.mounts
	not mount.holes.count == 1
	mount.holes.circle
}

judges contains {"subject": mount.path, "needs": ["there.holes.wide"]} if {
	some mount in input.mounts
	not mount.holes.count == 1
	mount.holes.wide
}

judges contains {"subject": mount.path, "needs": ["holes.wide"]} if {
	some mount in input.mounts
	not mount.holes.count == 1
	mount.there.holes.wide
}

findings contains {
	"subject": mount.path,
	"at": "holes.apart",
	"also": [mount.there.path],
	"figures": {"here": mount.holes.apart, "there": mount.there.holes.apart},
} if {
	some mount in input.mounts
	differ(mount.holes.apart, mount.there.holes.apart)
}

findings contains {
	"subject": mount.path,
	"at": "holes.wide",
	"also": [mount.there.path],
	"figures": {"here": mount.holes.wide, "there": mount.there.holes.wide},
} if {
	some mount in input.mounts
	differ(mount.holes.wide, mount.there.holes.wide)
}

findings contains {
	"subject": mount.path,
	"at": "holes.circle",
	"also": [mount.there.path],
	"figures": {"here": mount.holes.circle, "there": mount.there.holes.circle},
} if {
	some mount in input.mounts
	differ(mount.holes.circle, mount.there.holes.circle)
}

differ(a, b) if abs(a - b) > limits.play.value
