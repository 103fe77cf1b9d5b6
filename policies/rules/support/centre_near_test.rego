package rules.support.centre_near_test

import data.lib.cases_test as trial
import data.rules.support.centre_near

cases := {
	"near the edge": {
		"input": {"support_cases": [{"path": "support#raised", "stage": "raised", "calc": {"margin_left": 0.0995}}]},
		"want": [{"subject": "support#raised", "figures": {"stage": "raised", "margin": 0.0995}}],
	},
	"on the edge": {
		"input": {"support_cases": [{"path": "support#raised", "stage": "raised", "calc": {"margin_left": 0}}]},
		"want": [{"subject": "support#raised", "figures": {"stage": "raised", "margin": 0}}],
	},
	"far enough": {
		"input": {"support_cases": [{"path": "support#raised", "stage": "raised", "calc": {"margin_left": 0.1}}]},
		"want": [],
	},
	"outside, which is another rule's": {
		"input": {"support_cases": [{"path": "support#raised", "stage": "raised", "calc": {"margin_left": -0.01}}]},
		"want": [],
	},
	"not known": {
		"input": {"support_cases": [{"path": "support#raised", "stage": "raised"}]},
		"want": [{"subject": "support#raised", "missing": ["calc.margin_left"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(centre_near, "support_cases", each.want) with input as each.input
}
