package rules.recovery.eye_size_test

import data.lib.cases_test as trial
import data.rules.recovery.eye_size

cases := {
	"too small": {
		"input": {"tow_eyes": [{"path": "safety.tow-front", "inside": 0.0595}]},
		"want": [{"subject": "safety.tow-front", "at": "inside", "figures": {"inside": 0.0595, "least": 0.06}}],
	},
	"large enough": {
		"input": {"tow_eyes": [{"path": "safety.tow-front", "inside": 0.06}]},
		"want": [],
	},
	"not measured": {
		"input": {"tow_eyes": [{"path": "safety.tow-front", "colour": "red"}]},
		"want": [{"subject": "safety.tow-front", "missing": ["inside"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_size, "tow_eyes", each.want) with input as each.input
}
