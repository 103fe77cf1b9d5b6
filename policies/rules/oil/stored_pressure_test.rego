package rules.oil.stored_pressure_test

import data.lib.cases_test as trial
import data.rules.oil.stored_pressure

cases := {
	"still under pressure": {
		"input": {"oil": [{"path": "oil", "accumulator": {"vented_first": false}}]},
		"want": [{"subject": "oil", "at": "accumulator.vented_first"}],
	},
	"let down first": {
		"input": {"oil": [{"path": "oil", "accumulator": {"vented_first": true}}]},
		"want": [],
	},
	"no accumulator": {"input": {"oil": [{"path": "oil", "none": ["accumulator"]}]}, "want": []},
	"not said": {
		"input": {"oil": [{"path": "oil"}]},
		"want": [{"subject": "oil", "missing": ["accumulator.vented_first"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(stored_pressure, "oil", each.want) with input as each.input
}
