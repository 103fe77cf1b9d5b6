package rules.dolly.tips_test

import data.lib.cases_test as trial
import data.rules.dolly.tips

cases := {
	"on the edge": {
		"input": {"support": [{"path": "support", "dolly": "long", "calc": {"dolly_margin": 0}}]},
		"want": [],
	},
	"outside": {
		"input": {
			"support": [{"path": "support", "dolly": "long", "calc": {"dolly_margin": -0.005}}],
		},
		"want": [{
			"subject": "support",
			"at": "dolly",
			"figures": {"dolly": "long", "outside": 0.005},
		}],
	},
	"well inside": {
		"input": {
			"support": [{"path": "support", "dolly": "long", "calc": {"dolly_margin": 0.1}}],
		},
		"want": [],
	},
	"no dolly": {"input": {"support": [{"path": "support", "none": ["dolly"]}]}, "want": []},
	"not said on which": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["dolly"]}],
	},
	"margin not known": {
		"input": {"support": [{"path": "support", "dolly": "long"}]},
		"want": [{"subject": "support", "missing": ["calc.dolly_margin"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(tips, "support", each.want) with input as each.input
}
