package rules.safety.harness_slope_test

import data.lib.cases_test as trial
import data.rules.safety.harness_slope

cases := {
	"steeper than half a right angle": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"shoulder_slope": 0.79}}}]},
		"want": [{
			"subject": "car",
			"at": "safety.harness.shoulder_slope",
			"figures": {"slope": 0.79, "steepest": 0.7853981633974483},
		}],
	},
	"half a right angle": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"shoulder_slope": 0.7853981633974483}}}]},
		"want": [],
	},
	"slope not measured": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"points": 6}}}]},
		"want": [{"subject": "car", "missing": ["safety.harness.shoulder_slope"]}],
	},
	"no harness": {
		"input": {"cars": [{"path": "car", "safety": {"none": ["harness"]}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(harness_slope, "cars", each.want) with input as each.input
}
