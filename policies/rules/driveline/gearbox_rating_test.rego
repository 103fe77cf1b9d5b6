package rules.driveline.gearbox_rating_test

import data.lib.cases_test as trial
import data.rules.driveline.gearbox_rating

cases := {
	"over": {
		"input": {"gearbox": [{"path": "driveline.gearbox", "rated": 450, "calc": {"asked": 451}}]},
		"want": [{"subject": "driveline.gearbox", "at": "rated", "figures": {"asked": 451, "rated": 450}}],
	},
	"at its rating": {
		"input": {"gearbox": [{"path": "driveline.gearbox", "rated": 450, "calc": {"asked": 450}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"gearbox": [{"path": "driveline.gearbox"}]},
		"want": [{"subject": "driveline.gearbox", "missing": ["calc.asked", "rated"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(gearbox_rating, "gearbox", each.want) with input as each.input
}
