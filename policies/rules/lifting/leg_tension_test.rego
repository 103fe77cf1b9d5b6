package rules.lifting.leg_tension_test

import data.lib.cases_test as trial
import data.rules.lifting.leg_tension

cases := {
	"at its limit": {
		"input": {
			"lift_points": [{
				"path": "driveline.lift.front",
				"tackle": {"path": "shop.slings.chain", "rated": 500},
				"calc": {"tension": 500},
			}],
		},
		"want": [],
	},
	"over it": {
		"input": {
			"lift_points": [{
				"path": "driveline.lift.front",
				"tackle": {"path": "shop.slings.chain", "rated": 500},
				"calc": {"tension": 501},
			}],
		},
		"want": [{
			"subject": "driveline.lift.front",
			"at": "tackle.rated",
			"figures": {"tension": 501, "rated": 500},
		}],
	},
	"nothing said": {
		"input": {"lift_points": [{"path": "driveline.lift.front"}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["tackle.rated", "calc.tension"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(leg_tension, "lift_points", each.want) with input as each.input
}
