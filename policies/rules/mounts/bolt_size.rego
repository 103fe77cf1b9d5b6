# METADATA
# title: Mount bolt that its holes do not take
# description: |
#   A bolt of another thread jams or strips in a tapped hole, and one that is
#   thicker than a plain hole does not go in at all.
# related_resources:
#   - ref: common-practice
#     description: bolt, tapped hole and plain hole belong to one thread
# custom:
#   cases:
#     thread: {level: fault, message: "{subject} puts {bolt} bolts into holes tapped {hole}"}
#     clear: {level: fault, message: "{subject} puts {bolt} bolts through holes of {through}"}
#   subject: mounts
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     bolt: {dimension: text}
#     hole: {dimension: text}
#     through: {dimension: length, like: holes.clear}
#   fix: take the bolts that the tapped half asks for, and drill the bracket to suit them
#   rulebook: workshop
#   confidence: practice
package rules.mounts.bolt_size

judges contains {
	"subject": mount.path,
	"needs": ["bolts.thread", "holes.thread|holes.clear", "there.holes.thread|there.holes.clear"],
} if {
	some mount in input.mounts
}

findings contains {
	"subject": mount.path,
	"at": "bolts.thread",
	"case": "thread",
	"figures": {"bolt": mount.bolts.thread.text, "hole": mount.there.holes.thread.text},
} if {
	some mount in input.mounts
	mount.bolts.thread.text != mount.there.holes.thread.text
}

findings contains {
	"subject": mount.path,
	"at": "bolts.thread",
	"case": "thread",
	"figures": {"bolt": mount.bolts.thread.text, "hole": mount.holes.thread.text},
} if {
	some mount in input.mounts
	mount.bolts.thread.text != mount.holes.thread.text
}

findings contains {
	"subject": mount.path,
	"at": "holes.clear",
	"case": "clear",
	"figures": {"bolt": mount.bolts.thread.text, "through": mount.holes.clear},
} if {
	some mount in input.mounts
	mount.bolts.thread.major > mount.holes.clear
}

findings contains {
	"subject": mount.path,
	"at": "bolts.thread",
	"also": [mount.there.path],
	"case": "clear",
	"figures": {"bolt": mount.bolts.thread.text, "through": mount.there.holes.clear},
} if {
	some mount in input.mounts
	mount.bolts.thread.major > mount.there.holes.clear
}
