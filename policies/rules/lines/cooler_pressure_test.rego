package rules.lines.cooler_pressure_test

import data.lib.cases_test as trial
import data.rules.lines.cooler_pressure

cases := {
	"at its rating": {
		"input": {
			"coolers": [{
				"path": "oil.cooler",
				"kind": "oil cooler",
				"rated": 1000000,
				"calc": {"pressure": 1000000},
			}],
		},
		"want": [],
	},
	"over its rating": {
		"input": {
			"coolers": [{
				"path": "oil.cooler",
				"kind": "oil cooler",
				"rated": 1000000,
				"calc": {"pressure": 1010000},
			}],
		},
		"want": [{
			"subject": "oil.cooler",
			"at": "rated",
			"figures": {"pressure": 1010000, "rated": 1000000},
		}],
	},
	"nothing said": {
		"input": {"coolers": [{"path": "oil.cooler", "kind": "oil cooler"}]},
		"want": [{"subject": "oil.cooler", "missing": ["rated", "calc.pressure"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(cooler_pressure, "coolers", each.want) with input as each.input
}
