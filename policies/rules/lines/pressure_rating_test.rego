package rules.lines.pressure_rating_test

import data.lib.cases_test as trial
import data.rules.lines.pressure_rating

cases := {
	"a drain": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000},
				"pumped_by": "gravity",
				"service": "engine oil",
			}],
		},
		"want": [],
	},
	"a drain, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000, "rating": 690000},
				"pumped_by": "gravity",
				"service": "engine oil",
			}],
		},
		"want": [],
	},
	"a return of exhaust gas": {
		"input": {
			"lines": [{
				"path": "lines.back",
				"calc": {"pressure": 500000, "rating": 400000},
				"pumped_by": "return",
				"service": "exhaust",
			}],
		},
		"want": [{"subject": "lines.back", "judged": false}],
	},
	"a return of which nothing is known": {
		"input": {"lines": [{"path": "lines.back", "pumped_by": "return", "service": "fuel"}]},
		"want": [{"subject": "lines.back", "judged": true}],
	},
	"a return over its rating": {
		"input": {
			"lines": [{
				"path": "lines.back",
				"calc": {"pressure": 500000, "rating": 400000},
				"pumped_by": "return",
				"service": "fuel",
			}],
		},
		"want": [{
			"subject": "lines.back",
			"at": "hose",
			"figures": {"pressure": 500000, "rating": 400000},
		}],
	},
	"a return within its rating": {
		"input": {
			"lines": [{
				"path": "lines.back",
				"calc": {"pressure": 300000, "rating": 400000},
				"pumped_by": "return",
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.back", "judged": true}],
	},
	"a still line": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000},
				"pumped_by": "nothing",
				"service": "engine oil",
			}],
		},
		"want": [],
	},
	"a still line, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000, "rating": 690000},
				"pumped_by": "nothing",
				"service": "engine oil",
			}],
		},
		"want": [],
	},
	"above its rating": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000, "rating": 690000},
				"pumped_by": "pump",
				"service": "fuel",
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
				"calc": {"pressure": 690000, "rating": 690000},
				"pumped_by": "pump",
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"charge air": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000, "rating": 690000},
				"pumped_by": "pump",
				"service": "charge air",
			}],
		},
		"want": [],
	},
	"charge air that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "charge air"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "pumped_by": "pump", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["calc.pressure", "calc.rating"]}],
	},
	"on the suction side": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000},
				"pumped_by": "suction",
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"on the suction side, all known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"pressure": 700000, "rating": 690000},
				"pumped_by": "suction",
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"service not said": {
		"input": {
			"lines": [{"path": "lines.feed", "calc": {"pressure": 700000, "rating": 690000}}],
		},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"a suction line of which nothing is known": {
		"input": {"lines": [{"path": "lines.suck", "service": "fuel", "pumped_by": "suction"}]},
		"want": [{"subject": "lines.suck", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pressure_rating, "lines", each.want) with input as each.input
}
