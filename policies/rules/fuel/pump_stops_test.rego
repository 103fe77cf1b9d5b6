package rules.fuel.pump_stops_test

import data.lib.cases_test as trial
import data.rules.fuel.pump_stops

cases := {
	"nothing": {
		"input": {"fuel": [{"path": "fuel", "pump": {"none": ["stops"]}}]},
		"want": [{"subject": "fuel", "at": "pump.stops"}],
	},
	"the engine computer": {
		"input": {"fuel": [{"path": "fuel", "pump": {"stops": "engine computer"}}]},
		"want": [],
	},
	"nothing of another kind": {
		"input": {
			"fuel": [{"path": "fuel", "pump": {"stops": "engine computer", "none": ["relief"]}}],
		},
		"want": [],
	},
	"nothing, and the engine computer": {
		"input": {
			"fuel": [{"path": "fuel", "pump": {"stops": "engine computer", "none": ["stops"]}}],
		},
		"want": [{"subject": "fuel", "at": "pump.stops"}],
	},
	"not said": {
		"input": {"fuel": [{"path": "fuel", "pump": {"draws": 9}}]},
		"want": [{"subject": "fuel", "missing": ["pump.stops"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pump_stops, "fuel", each.want) with input as each.input
}
