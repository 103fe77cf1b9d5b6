package rules.tune.throttle_closes_test

import data.lib.cases_test as trial
import data.rules.tune.throttle_closes

cases := {
	"springs outside": {
		"input": {
			"engines": [{
				"path": "driveline.engine",
				"throttle_closes": "external springs",
				"none": ["boost"],
			}],
		},
		"want": [],
	},
	"a spring inside": {
		"input": {
			"engines": [{
				"path": "driveline.engine",
				"throttle_closes": "internal spring",
				"none": ["boost"],
			}],
		},
		"want": [{"subject": "driveline.engine", "at": "throttle_closes"}],
	},
	"none: that finds tune.throttle_free": {
		"input": {"engines": [{"path": "driveline.engine", "none": ["throttle_closes"]}]},
		"want": [],
	},
	"not said, and no boost": {
		"input": {"engines": [{"path": "driveline.engine", "none": ["boost"]}]},
		"want": [{"subject": "driveline.engine", "missing": ["throttle_closes"]}],
	},
	"not said": {
		"input": {"engines": [{"path": "driveline.engine"}]},
		"want": [{"subject": "driveline.engine", "missing": ["throttle_closes"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(throttle_closes, "engines", each.want) with input as each.input
}
