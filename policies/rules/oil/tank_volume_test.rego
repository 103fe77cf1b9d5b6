package rules.oil.tank_volume_test

import data.lib.cases_test as trial
import data.rules.oil.tank_volume

cases := {
	"too small": {
		"input": {"oil": [{"path": "oil", "tank": {"holds": 0.0089}, "needs": {"oil_tank": 0.009}}]},
		"want": [{
			"subject": "oil",
			"at": "tank.holds",
			"figures": {"holds": 0.0089, "least": 0.009},
		}],
	},
	"large enough": {
		"input": {"oil": [{"path": "oil", "tank": {"holds": 0.009}, "needs": {"oil_tank": 0.009}}]},
		"want": [],
	},
	"not known": {
		"input": {"oil": [{"path": "oil", "tank": {"fill": 0.007}}]},
		"want": [{"subject": "oil", "missing": ["needs.oil_tank", "tank.holds"]}],
	},
	"a wet sump": {
		"input": {"oil": [{"path": "oil", "none": ["tank"], "needs": {"none": ["oil_tank"]}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(tank_volume, "oil", each.want) with input as each.input
}
