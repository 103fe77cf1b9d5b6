package rules.tune.throttle_kind_test

import data.lib.cases_test as trial
import data.rules.tune.throttle_kind

cases := {
	"a motor for a cable": {
		"input": {"tunes": [{"path": "driveline.tune", "throttle": "electronic", "engine": {"path": "driveline.engine", "throttle": "cable"}}]},
		"want": [{
			"subject": "driveline.tune",
			"at": "throttle",
			"also": ["driveline.engine"],
			"figures": {"map": "electronic", "engine": "cable"},
		}],
	},
	"a cable for a cable": {
		"input": {"tunes": [{"path": "driveline.tune", "throttle": "cable", "engine": {"path": "driveline.engine", "throttle": "cable"}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"tunes": [{"path": "driveline.tune"}]},
		"want": [{"subject": "driveline.tune", "missing": ["throttle", "engine.throttle"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(throttle_kind, "tunes", each.want) with input as each.input
}
