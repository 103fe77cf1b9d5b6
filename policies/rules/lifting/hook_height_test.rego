package rules.lifting.hook_height_test

import data.lib.cases_test as trial
import data.rules.lifting.hook_height

cases := {
	"just enough": {
		"input": {
			"support": [{
				"path": "support",
				"fit": {"leaves": ["up", "forward"]},
				"crane": {"hook_to": 2},
				"calc": {"hook_needed": 2},
			}],
		},
		"want": [],
	},
	"too low": {
		"input": {
			"support": [{
				"path": "support",
				"fit": {"leaves": ["up", "forward"]},
				"crane": {"hook_to": 2},
				"calc": {"hook_needed": 2.05},
			}],
		},
		"want": [{"subject": "support", "at": "hoist", "figures": {"needed": 2.05, "reaches": 2}}],
	},
	"nothing said": {
		"input": {"support": [{"path": "support", "fit": {"leaves": ["up", "forward"]}}]},
		"want": [{"subject": "support", "missing": ["crane.hook_to", "calc.hook_needed"]}],
	},
	"goes out downwards": {
		"input": {"support": [{"path": "support", "fit": {"leaves": ["down"]}}]},
		"want": [{"subject": "support", "judged": true}],
	},
	"way out not said": {
		"input": {
			"support": [{"path": "support", "crane": {"hook_to": 2}, "calc": {"hook_needed": 2}}],
		},
		"want": [{"subject": "support", "missing": ["fit.leaves"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hook_height, "support", each.want) with input as each.input
}
