# METADATA
# title: Catch tank smaller than the rules ask
# description: |
#   The rules ask for a catch tank of two litres, three above two litres of
#   engine, with the level to be seen. How they count a boosted engine
#   differs from one rule text to another, so the larger is asked of it here.
#   A breather closed as the maker built it needs none.
# related_resources:
#   - ref: fia-255
#     description: "oil catch tank: volume by capacity, visible level"
# custom:
#   cases:
#     volume:
#       level: fault
#       message: "the catch tank holds {holds}; the rules ask for {least}"
#     level:
#       level: fault
#       message: the level in the catch tank cannot be seen from outside
#   subject: oil
#   stages: [joined, filled, first_start, event]
#   figures:
#     holds: {dimension: volume, like: catch_tank.holds}
#     least: {dimension: volume, like: catch_tank.holds}
#   fix: fit a catch tank of that volume, of clear material or with a sight tube
#   rulebook: appendix-j
#   confidence: practice
package rules.oil.catch_volume

import data.rules.oil.limits.catch_volume as limits

judges contains {"subject": oil.path, "needs": ["engine.breather"]} if some oil in input.oil

judges contains {
	"subject": oil.path,
	"needs": ["catch_tank.holds", "catch_tank.level_visible", "calc.displacement", "engine.induction"],
} if {
	some oil in input.oil
	oil.engine.breather == "open"
}

findings contains {
	"subject": oil.path,
	"at": "catch_tank.holds",
	"case": "volume",
	"figures": {"holds": oil.catch_tank.holds, "least": wanted},
} if {
	some oil in input.oil
	oil.engine.breather == "open"
	wanted := least(oil.calc.displacement, oil.engine.induction)
	oil.catch_tank.holds < wanted
}

findings contains {"subject": oil.path, "at": "catch_tank.level_visible", "case": "level", "figures": {}} if {
	some oil in input.oil
	oil.engine.breather == "open"
	oil.catch_tank.level_visible == false
}

least(displacement, induction) := limits.small.value if {
	displacement <= limits.border.value
	induction == "naturally aspirated"
}

least(displacement, _) := limits.large.value if displacement > limits.border.value

least(_, induction) := limits.large.value if induction != "naturally aspirated"
