package rules.support.centre_outside_test

import data.lib.cases_test as trial
import data.rules.support.centre_outside

cases := {
	"outside": {
		"input": {"support_cases": [{"path": "support#hoisting", "stage": "hoisting", "calc": {"margin_left": -0.01}}]},
		"want": [{"subject": "support#hoisting", "figures": {"stage": "hoisting", "out": 0.01}}],
	},
	"over the edge itself": {
		"input": {"support_cases": [{"path": "support#hoisting", "stage": "hoisting", "calc": {"margin_left": 0}}]},
		"want": [],
	},
	"not known": {
		"input": {"support_cases": [{"path": "support#hoisting", "stage": "hoisting"}]},
		"want": [{"subject": "support#hoisting", "missing": ["calc.margin_left"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(centre_outside, "support_cases", each.want) with input as each.input
}
