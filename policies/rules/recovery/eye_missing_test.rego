package rules.recovery.eye_missing_test

import data.lib.cases_test as trial
import data.rules.recovery.eye_missing

eye := {"inside": 0.06}

cases := {
	"both there": {
		"input": {"cars": [{"path": "car", "safety": {"tow_front": eye, "tow_rear": eye, "none": ["window_net"]}}]},
		"want": [],
	},
	"none in front": {
		"input": {"cars": [{"path": "car", "safety": {"tow_front": eye, "tow_rear": eye, "none": ["tow_front"]}}]},
		"want": [{"subject": "car", "at": "safety.tow_front", "case": "front", "figures": {}}],
	},
	"none behind": {
		"input": {"cars": [{"path": "car", "safety": {"tow_front": eye, "tow_rear": eye, "none": ["tow_rear"]}}]},
		"want": [{"subject": "car", "at": "safety.tow_rear", "case": "rear", "figures": {}}],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car", "safety": {"none": ["window_net"]}}]},
		"want": [{"subject": "car", "missing": ["safety.tow_front", "safety.tow_rear"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_missing, "cars", each.want) with input as each.input
}
