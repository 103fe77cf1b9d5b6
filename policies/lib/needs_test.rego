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
