package rules.fuel.injector_duty_test

import data.lib.cases_test as trial
import data.rules.fuel.injector_duty

cases := {
	"at the limit": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"path": "driveline.engine"},
				"calc": {"injector_duty": 0.85},
			}],
		},
		"want": [],
	},
	"past it": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"path": "driveline.engine"},
				"calc": {"injector_duty": 0.853},
			}],
		},
		"want": [{
			"subject": "fuel",
			"also": ["driveline.engine"],
			"figures": {"duty": 0.853, "most": 0.85},
		}],
	},
	"not known": {
		"input": {"fuel": [{"path": "fuel", "engine": {"path": "driveline.engine"}}]},
		"want": [{"subject": "fuel", "missing": ["calc.injector_duty"]}],
	},
	"not known, of an engine without boost": {
		"input": {"fuel": [{"path": "fuel", "engine": {"path": "driveline.engine", "none": ["boost"]}}]},
		"want": [{"subject": "fuel", "missing": ["calc.injector_duty"]}],
	},
	"carburettors": {
		"input": {"fuel": [{"path": "fuel", "engine": {"path": "driveline.engine", "none": ["injectors"]}}]},
		"want": [{"subject": "fuel", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(injector_duty, "fuel", each.want) with input as each.input
}
