package rules.recovery.eye_colour_test

import data.lib.cases_test as trial
import data.rules.recovery.eye_colour

cases := {
	"black": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "black"}]},
		"want": [{"subject": "safety.tow-rear", "at": "colour", "figures": {"colour": "black"}}],
	},
	"yellow": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "yellow"}]},
		"want": [],
	},
	"red": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "red"}]},
		"want": [],
	},
	"orange": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "orange"}]},
		"want": [],
	},
	"black with an arrow": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "black", "marked": "red arrow"}]},
		"want": [],
	},
	"nothing said": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "inside": 0.06}]},
		"want": [{"subject": "safety.tow-rear", "missing": ["colour|marked"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_colour, "tow_eyes", each.want) with input as each.input
}
