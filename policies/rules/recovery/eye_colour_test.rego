package rules.recovery.eye_colour_test

import data.lib.cases_test as trial
import data.rules.recovery.eye_colour

cases := {
	"black and not marked": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "black", "none": ["marked"]}]},
		"want": [{"subject": "safety.tow-rear", "at": "colour", "figures": {"colour": "black"}}],
	},
	"yellow": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "yellow", "none": ["marked"]}]},
		"want": [],
	},
	"red": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "red", "none": ["marked"]}]},
		"want": [],
	},
	"orange": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "orange", "none": ["marked"]}]},
		"want": [],
	},
	"black with an arrow": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "black", "marked": "red arrow"}]},
		"want": [],
	},
	"red, and nothing said of a mark": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "red"}]},
		"want": [{"subject": "safety.tow-rear", "judged": true}],
	},
	"marked, and nothing said of a colour": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "marked": "red arrow"}]},
		"want": [{"subject": "safety.tow-rear", "judged": true}],
	},
	"black, and nothing said of a mark": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "colour": "black"}]},
		"want": [{"subject": "safety.tow-rear", "missing": ["marked"]}],
	},
	"not marked, and nothing said of a colour": {
		"input": {"tow_eyes": [{"path": "safety.tow-rear", "none": ["marked"]}]},
		"want": [{"subject": "safety.tow-rear", "missing": ["colour"]}],
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
