package rules.service.due_test

import data.lib.cases_test as trial
import data.rules.service.due

cases := {
	"used up": {
		"input": {"life": [{"path": "driveline.life.cam-belt", "calc": {"share": 1, "left": "0 h"}}]},
		"want": [{"subject": "driveline.life.cam-belt", "at": "lasts", "case": "used", "figures": {"left": "0 h"}}],
	},
	"nearly": {
		"input": {"life": [{"path": "driveline.life.cam-belt", "calc": {"share": 0.801, "left": "0 h"}}]},
		"want": [{
			"subject": "driveline.life.cam-belt",
			"at": "lasts",
			"case": "near",
			"figures": {"left": "0 h"},
		}],
	},
	"a fifth left": {
		"input": {"life": [{"path": "driveline.life.cam-belt", "calc": {"share": 0.8, "left": "0 h"}}]},
		"want": [],
	},
	"not known": {
		"input": {"life": [{"path": "driveline.life.cam-belt"}]},
		"want": [{"subject": "driveline.life.cam-belt", "missing": ["calc.share", "calc.left"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(due, "life", each.want) with input as each.input
}
