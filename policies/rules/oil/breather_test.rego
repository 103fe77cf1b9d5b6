package rules.oil.breather_test

import data.lib.cases_test as trial
import data.rules.oil.breather

cases := {
	"no catch tank": {
		"input": {"oil": [{"path": "oil", "engine": {"breather": "open"}, "none": ["catch_tank"]}]},
		"want": [{"subject": "oil", "at": "catch_tank"}],
	},
	"closed breather": {
		"input": {
			"oil": [{"path": "oil", "engine": {"breather": "closed"}, "none": ["catch_tank"]}],
		},
		"want": [],
	},
	"catch tank": {
		"input": {
			"oil": [{"path": "oil", "engine": {"breather": "open"}, "catch_tank": {"holds": 0.002}}],
		},
		"want": [],
	},
	"catch tank not said": {
		"input": {"oil": [{"path": "oil", "engine": {"breather": "open"}}]},
		"want": [{"subject": "oil", "missing": ["catch_tank"]}],
	},
	"catch tank and something else is none": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open"},
				"catch_tank": {"holds": 0.002},
				"none": ["accumulator"],
			}],
		},
		"want": [],
	},
	"breather not said": {
		"input": {"oil": [{"path": "oil", "none": ["catch_tank"]}]},
		"want": [{"subject": "oil", "missing": ["engine.breather"]}],
	},
	"closed, and nothing said of a tank": {
		"input": {"oil": [{"path": "oil", "engine": {"breather": "closed"}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(breather, "oil", each.want) with input as each.input
}
