package rules.recovery.eye_strength_test

import data.lib.cases_test as trial
import data.rules.recovery.eye_strength

cases := {
	"just enough": {
		"input": {
			"tow_eyes": [{"path": "safety.tow-front", "rated": 9000, "calc": {"weight": 9000}}],
		},
		"want": [],
	},
	"weaker": {
		"input": {
			"tow_eyes": [{"path": "safety.tow-front", "rated": 8900, "calc": {"weight": 9000}}],
		},
		"want": [{
			"subject": "safety.tow-front",
			"at": "rated",
			"figures": {"rated": 8900, "weight": 9000},
		}],
	},
	"nothing said": {
		"input": {"tow_eyes": [{"path": "safety.tow-front"}]},
		"want": [{"subject": "safety.tow-front", "missing": ["rated", "calc.weight"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_strength, "tow_eyes", each.want) with input as each.input
}
