package rules.dolly.saddle_test

import data.lib.cases_test as trial
import data.rules.dolly.saddle

cases := {
	"built for it": {
		"input": {
			"support": [{
				"path": "support",
				"dolly": "long",
				"driveline": "four",
				"carrier": {"carries": ["two", "four"]},
			}],
		},
		"want": [],
	},
	"built for others": {
		"input": {
			"support": [{
				"path": "support",
				"dolly": "long",
				"driveline": "five",
				"carrier": {"carries": ["two", "four"]},
			}],
		},
		"want": [{
			"subject": "support",
			"at": "dolly",
			"figures": {"dolly": "long", "driveline": "five"},
		}],
	},
	"built for others only": {
		"input": {
			"support": [{
				"path": "support",
				"dolly": "long",
				"driveline": "four",
				"carrier": {"carries": ["two", "six"]},
			}],
		},
		"want": [{"subject": "support", "at": "dolly"}],
	},
	"not said for which": {
		"input": {"support": [{"path": "support", "dolly": "long", "driveline": "four"}]},
		"want": [{"subject": "support", "missing": ["carrier.carries"]}],
	},
	"not said for what": {
		"input": {"support": [{"path": "support", "dolly": "long"}]},
		"want": [{"subject": "support", "missing": ["carrier.carries", "driveline"]}],
	},
	"no dolly": {
		"input": {"support": [{"path": "support", "driveline": "four", "none": ["dolly"]}]},
		"want": [],
	},
	"not said on which": {
		"input": {"support": [{"path": "support", "driveline": "four"}]},
		"want": [{"subject": "support", "missing": ["dolly"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(saddle, "support", each.want) with input as each.input
}
