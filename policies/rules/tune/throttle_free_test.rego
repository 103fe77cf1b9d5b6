package rules.tune.throttle_free_test

import data.lib.cases_test as trial
import data.rules.tune.throttle_free

cases := {
	"nothing": {
		"input": {"engines": [{"path": "driveline.engine", "none": ["throttle_closes"]}]},
		"want": [{"subject": "driveline.engine", "at": "throttle_closes"}],
	},
	"nothing else is missing": {
		"input": {"engines": [{"path": "driveline.engine", "throttle_closes": "internal spring", "none": ["boost"]}]},
		"want": [],
	},
	"springs, and none": {
		"input": {"engines": [{"path": "driveline.engine", "throttle_closes": "internal spring", "none": ["throttle_closes"]}]},
		"want": [{"subject": "driveline.engine", "at": "throttle_closes"}],
	},
	"springs": {
		"input": {"engines": [{"path": "driveline.engine", "throttle_closes": "external springs"}]},
		"want": [],
	},
	"an engine without a throttle": {
		"input": {"engines": [{"path": "driveline.engine", "none": ["throttle", "throttle_closes"]}]},
		"want": [],
	},
	"not said": {
		"input": {"engines": [{"path": "driveline.engine"}]},
		"want": [{"subject": "driveline.engine", "missing": ["throttle_closes"]}],
	},
	"not said, and no boost": {
		"input": {"engines": [{"path": "driveline.engine", "none": ["boost"]}]},
		"want": [{"subject": "driveline.engine", "missing": ["throttle_closes"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(throttle_free, "engines", each.want) with input as each.input
}
