package rules.lifting.point_load_test

import data.lib.cases_test as trial
import data.rules.lifting.point_load

cases := {
	"at its limit": {
		"input": {
			"lift_points": [{"path": "driveline.lift.front", "rated": 150, "calc": {"tension": 150}}],
		},
		"want": [],
	},
	"over it": {
		"input": {
			"lift_points": [{"path": "driveline.lift.front", "rated": 150, "calc": {"tension": 151}}],
		},
		"want": [{
			"subject": "driveline.lift.front",
			"at": "rated",
			"figures": {"tension": 151, "rated": 150},
		}],
	},
	"nothing said": {
		"input": {"lift_points": [{"path": "driveline.lift.front"}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["rated", "calc.tension"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(point_load, "lift_points", each.want) with input as each.input
}
