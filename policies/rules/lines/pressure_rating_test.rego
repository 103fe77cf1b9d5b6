package rules.lines.pressure_rating_test

import data.lib.cases_test as trial
import data.rules.lines.pressure_rating

cases := {
	"above its rating": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"calc": {"pressure": 700000, "rating": 690000},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "hose",
			"figures": {"pressure": 700000, "rating": 690000},
		}],
	},
	"at its rating": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"calc": {"pressure": 690000, "rating": 690000},
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "pumped_by": "pump"}]},
		"want": [{"subject": "lines.feed", "missing": ["calc.pressure", "calc.rating"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "calc": {"pressure": 700000, "rating": 690000}}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"on the suction side": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "suction",
				"calc": {"pressure": 700000},
			}],
		},
		"want": [],
	},
	"a drain": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "gravity",
				"calc": {"pressure": 700000},
			}],
		},
		"want": [],
	},
	"a still line": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "nothing",
				"calc": {"pressure": 700000},
			}],
		},
		"want": [],
	},
	"on the suction side, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "suction",
				"calc": {"pressure": 700000, "rating": 690000},
			}],
		},
		"want": [],
	},
	"a drain, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "gravity",
				"calc": {"pressure": 700000, "rating": 690000},
			}],
		},
		"want": [],
	},
	"a still line, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "nothing",
				"calc": {"pressure": 700000, "rating": 690000},
			}],
		},
		"want": [],
	},
	"charge air": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "charge air",
				"pumped_by": "pump",
				"calc": {"pressure": 700000, "rating": 690000},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pressure_rating, "lines", each.want) with input as each.input
}
