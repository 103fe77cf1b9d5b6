# METADATA
# title: Part that served a failed engine
# description: |
#   An engine that lets go leaves metal in its cooler, lines, tank and
#   filter. The next engine drinks it in its first minute. A cooler seldom
#   comes clean; ask before the joint is closed.
# related_resources:
#   - ref: common-practice
#     description: debris stays in coolers, lines and tanks
# custom:
#   level: fault
#   subject: history
#   stages: [hanging, out_raised, out_stored, trial_fit, joined, filled, first_start, event]
#   message: "{part} served an engine that failed on {failed} and was not flushed since"
#   figures:
#     part: {dimension: text}
#     failed: {dimension: date}
#   fix: replace the cooler; strip and clean lines and tank, cut the filter open, and write down the day it was flushed
#   rulebook: workshop
#   confidence: practice
package rules.oil.history

judges contains {"subject": entry.path, "needs": ["of", "flushed"]} if {
	some entry in input.history
	entry.served_failed_engine
}

# An entry may be about a crash. A note alone does not say that no engine failed.
judges contains {"subject": entry.path, "needs": ["served_failed_engine|in_crash"]} if {
	some entry in input.history
}

findings contains {
	"subject": entry.path,
	"at": "flushed",
	"figures": {"part": entry.of, "failed": entry.served_failed_engine},
} if {
	some entry in input.history
	entry.flushed < entry.served_failed_engine
}

findings contains {
	"subject": entry.path,
	"at": "flushed",
	"figures": {"part": entry.of, "failed": failed},
} if {
	some entry in input.history
	failed := entry.served_failed_engine
	"flushed" in entry.none
}
