package rules.clutch.capacity_test

import data.lib.cases_test as trial
import data.rules.clutch.capacity

cases := {
	"slips": {
		"input": {"clutch": [{"path": "clutch", "calc": {"capacity": 590, "engine_torque": 600}}]},
		"want": [{
			"subject": "clutch",
			"at": "slave.clamp",
			"figures": {"capacity": 590, "torque": 600},
		}],
	},
	"just holds": {
		"input": {"clutch": [{"path": "clutch", "calc": {"capacity": 600, "engine_torque": 600}}]},
		"want": [],
	},
	"not known": {
		"input": {"clutch": [{"path": "clutch", "fluid": "DOT 4"}]},
		"want": [{"subject": "clutch", "missing": ["calc.capacity", "calc.engine_torque"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(capacity, "clutch", each.want) with input as each.input
}
