package rules.fuel.tank_wall_test

import data.lib.cases_test as trial
import data.rules.fuel.tank_wall

cases := {
	"open to the cockpit": {
		"input": {"fuel": [{"path": "fuel", "cell": {"walled_off": false}}]},
		"want": [{"subject": "fuel", "at": "cell.walled_off"}],
	},
	"walled off": {
		"input": {"fuel": [{"path": "fuel", "cell": {"walled_off": true}}]},
		"want": [],
	},
	"not said": {
		"input": {"fuel": [{"path": "fuel", "cell": {"made": "2024-01-01"}}]},
		"want": [{"subject": "fuel", "missing": ["cell.walled_off"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(tank_wall, "fuel", each.want) with input as each.input
}
