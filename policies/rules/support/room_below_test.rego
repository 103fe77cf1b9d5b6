package rules.support.room_below_test

import data.lib.cases_test as trial
import data.rules.support.room_below

cases := {
	"just enough": {
		"input": {
			"support": [{
				"path": "support",
				"fit": {"leaves": ["down"]},
				"saddle_height": 0.6,
				"calc": {"saddle_needed": 0.6},
			}],
		},
		"want": [],
	},
	"too low": {
		"input": {
			"support": [{
				"path": "support",
				"fit": {"leaves": ["down"]},
				"saddle_height": 0.59,
				"calc": {"saddle_needed": 0.6},
			}],
		},
		"want": [{
			"subject": "support",
			"at": "saddle_height",
			"figures": {"needed": 0.6, "set": 0.59},
		}],
	},
	"goes out upwards": {
		"input": {"support": [{"path": "support", "fit": {"leaves": ["up"]}}]},
		"want": [{"subject": "support", "judged": true}],
	},
	"nothing said": {
		"input": {"support": [{"path": "support", "fit": {"leaves": ["down"]}}]},
		"want": [{"subject": "support", "missing": ["saddle_height", "calc.saddle_needed"]}],
	},
	"way out not said": {
		"input": {
			"support": [{"path": "support", "saddle_height": 0.6, "calc": {"saddle_needed": 0.6}}],
		},
		"want": [{"subject": "support", "missing": ["fit.leaves"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(room_below, "support", each.want) with input as each.input
}
