# METADATA
# title: Bolts that come undone only once
# description: |
#   Stretch bolts and the like are spent when they are taken out. Where the
#   swap undoes them, new ones have to lie ready before the first spanner is
#   put on.
# related_resources:
#   - ref: common-practice
#     description: what is used once is replaced whenever it is undone
# custom:
#   level: advice
#   subject: fastenings
#   stages: [raised, hoisting, trial_fit, joined]
#   message: "{subject} ({holds}) is used once, and the swap undoes it: {count} new ones are wanted"
#   figures:
#     count: {dimension: number}
#     holds: {dimension: text}
#   fix: order new ones before the driveline comes out, and tighten them as their maker says
#   rulebook: workshop
#   confidence: practice
package rules.fasteners.single_use

# Only special bolts are used once; of those it has to be said.
judges contains {"subject": fastening.path, "needs": ["use_once"]} if {
	some fastening in input.fastenings
	fastening.undone
	fastening.what
}

judges contains {"subject": fastening.path, "needs": []} if {
	some fastening in input.fastenings
	fastening.undone
}

findings contains {
	"subject": fastening.path,
	"at": "use_once",
	"figures": {"count": fastening.count, "holds": fastening.holds},
} if {
	some fastening in input.fastenings
	fastening.undone
	fastening.use_once
}
