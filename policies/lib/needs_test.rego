package lib.needs_test

import data.lib.needs

line := {
	"path": "lines.feed",
	"length": 1.2,
	"capped": false,
	"bore": 0.01,
	"hose": {"bend": 0.1, "none": ["liner"], "asked": ["rated"], "guessed": ["bend"]},
	"none": ["sleeve"],
	"asked": ["radius"],
	"guessed": ["length", "from"],
	"from": {"form": "37-flare"},
}

missing_cases := {
	"a value": {"needs": ["length"], "want": []},
	"a value that is false": {"needs": ["capped"], "want": []},
	"left out": {"needs": ["rise"], "want": ["rise"]},
	"asked": {"needs": ["radius"], "want": ["radius"]},
	"none is an answer": {"needs": ["sleeve"], "want": []},
	"none answers for what it would hold": {"needs": ["sleeve.rated"], "want": []},
	"in an object": {"needs": ["hose.bend"], "want": []},
	"none in an object": {"needs": ["hose.liner"], "want": []},
	"asked in an object": {"needs": ["hose.rated"], "want": ["hose.rated"]},
	"in an object left out": {"needs": ["to.form"], "want": ["to.form"]},
	"in a value that is no object": {"needs": ["length.unit"], "want": ["length.unit"]},
	"either": {"needs": ["rise|length"], "want": []},
	"neither": {"needs": ["rise|hose.rated"], "want": ["rise|hose.rated"]},
	"in the order given": {"needs": ["rise", "length", "radius"], "want": ["rise", "radius"]},
	"of nothing": {"needs": [], "want": []},
}

test_missing[name] if {
	some name, each in missing_cases
	needs.missing(line, each.needs) == each.want
}

guessed_cases := {
	"a value": {"needs": ["length"], "want": ["length"]},
	"in an object": {"needs": ["hose.bend"], "want": ["hose.bend"]},
	"in a guessed object": {"needs": ["from.form"], "want": ["from.form"]},
	"one of either": {"needs": ["bore|length"], "want": ["length"]},
	"known": {"needs": ["bore", "sleeve", "hose.rated"], "want": []},
}

test_guessed[name] if {
	some name, each in guessed_cases
	needs.guessed(line, each.needs) == each.want
}

# One thing says what the other lacks, so that each need has both kinds.
bare := {"path": "lines.bare", "rise": 0.2, "to": {"port": {"hot": 350, "guessed": ["hot"]}}}

whole_collection := {
	"length": {"said": {"lines.feed"}, "marked": {"lines.feed"}},
	"capped": {"said": {"lines.feed"}, "marked": {"lines.feed"}},
	"rise": {"said": {"lines.bare"}, "marked": {"lines.feed"}},
	"sleeve": {"said": set(), "marked": {"lines.feed"}},
	"hose.bend": {"said": {"lines.feed"}, "marked": {"lines.feed"}},
	"hose.rated": {"said": set(), "marked": {"lines.feed"}},
	"to.port.hot": {"said": {"lines.bare"}, "marked": {"lines.bare", "lines.feed"}},
	"rise|length": {"said": {"lines.bare", "lines.feed"}, "marked": {"lines.feed"}},
}

test_said_of_a_collection[need] if {
	some need, want in whole_collection
	needs.said("lines", need) == want.said with input as {"lines": [line, bare]}
}

test_marked_in_a_collection[need] if {
	some need, want in whole_collection
	needs.marked("lines", need) == want.marked with input as {"lines": [line, bare]}
}
