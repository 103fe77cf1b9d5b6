package rules.fuel.vent_test

import data.lib.cases_test as trial
import data.rules.fuel.vent

cases := {
	"none": {
		"input": {"fuel": [{"path": "fuel", "cell": {"none": ["vent_valve"]}}]},
		"want": [{"subject": "fuel", "at": "cell.vent_valve"}],
	},
	"a valve": {
		"input": {"fuel": [{"path": "fuel", "cell": {"vent_valve": "ball valve"}}]},
		"want": [],
	},
	"none of something else": {
		"input": {
			"fuel": [{"path": "fuel", "cell": {"vent_valve": "ball valve", "none": ["drain"]}}],
		},
		"want": [],
	},
	"none, then one": {
		"input": {
			"fuel": [{"path": "fuel", "cell": {"vent_valve": "ball valve", "none": ["vent_valve"]}}],
		},
		"want": [{"subject": "fuel", "at": "cell.vent_valve"}],
	},
	"not said": {
		"input": {"fuel": [{"path": "fuel", "cell": {"made": "2024-01-01"}}]},
		"want": [{"subject": "fuel", "missing": ["cell.vent_valve"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(vent, "fuel", each.want) with input as each.input
}
