package rules.lifting.hook_load_test

import data.lib.cases_test as trial
import data.rules.lifting.hook_load

cases := {
	"over": {
		"input": {"support": [{"path": "support", "calc": {"hook_load": 251, "hook_rated": 250}}]},
		"want": [{"subject": "support", "at": "boom", "figures": {"load": 251, "rated": 250}}],
	},
	"at its plate": {
		"input": {"support": [{"path": "support", "calc": {"hook_load": 250, "hook_rated": 250}}]},
		"want": [],
	},
	"neither known": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["calc.hook_load", "calc.hook_rated"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hook_load, "support", each.want) with input as each.input
}
