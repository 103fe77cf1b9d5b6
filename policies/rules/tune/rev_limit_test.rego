package rules.tune.rev_limit_test

import data.lib.cases_test as trial
import data.rules.tune.rev_limit

cases := {
	"too high": {
		"input": {"tunes": [{"path": "driveline.tune", "rev_limit": 801, "engine": {"path": "driveline.engine", "rev_limit": 800}}]},
		"want": [{
			"subject": "driveline.tune",
			"at": "rev_limit",
			"also": ["driveline.engine"],
			"figures": {"map": 801, "engine": 800},
		}],
	},
	"at the engine's": {
		"input": {"tunes": [{"path": "driveline.tune", "rev_limit": 800, "engine": {"path": "driveline.engine", "rev_limit": 800}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"tunes": [{"path": "driveline.tune"}]},
		"want": [{"subject": "driveline.tune", "missing": ["rev_limit", "engine.rev_limit"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rev_limit, "tunes", each.want) with input as each.input
}
