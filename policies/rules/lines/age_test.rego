package rules.lines.age_test

import data.lib.cases_test as trial
import data.rules.lines.age

cases := {
	"past it": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"hose": {"made": "2020-01-01"},
				"calc": {"age": 97},
				"kind": {"lasts": 96},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "hose.made",
			"figures": {"age": 97, "life": 96},
		}],
	},
	"on its last day": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"hose": {"made": "2020-01-01"},
				"calc": {"age": 96},
				"kind": {"lasts": 96},
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "calc": {"age": 97}}]},
		"want": [{"subject": "lines.feed", "missing": ["hose.made", "kind.lasts"]}],
	},
	"steel pipe": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"liner": "metal"}}]},
		"want": [],
	},
	"steel pipe, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"hose": {"made": "2020-01-01"},
				"calc": {"age": 97},
				"kind": {"lasts": 96, "liner": "metal"},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(age, "lines", each.want) with input as each.input
}
