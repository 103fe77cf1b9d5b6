package rules.tune.throttle_kind_test

import data.lib.cases_test as trial
import data.rules.tune.throttle_kind

cases := {
	"all of one kind": {
		"input": {
			"engines": [{
				"path": "driveline.engine",
				"throttle": "cable",
				"tune": {"throttle": "cable"},
				"car": {"throttle": "cable"},
			}],
		},
		"want": [],
	},
	"another map": {
		"input": {
			"engines": [{
				"path": "driveline.engine",
				"throttle": "cable",
				"tune": {"throttle": "electronic"},
				"car": {"throttle": "cable"},
			}],
		},
		"want": [{
			"subject": "driveline.engine",
			"case": "map",
			"at": "tune.throttle",
			"figures": {"fitted": "cable", "other": "electronic"},
		}],
	},
	"another pedal": {
		"input": {
			"engines": [{
				"path": "driveline.engine",
				"throttle": "cable",
				"tune": {"throttle": "cable"},
				"car": {"throttle": "electronic"},
			}],
		},
		"want": [{
			"subject": "driveline.engine",
			"case": "pedal",
			"at": "car.throttle",
			"figures": {"fitted": "cable", "other": "electronic"},
		}],
	},
	"nothing said": {
		"input": {"engines": [{"path": "driveline.engine"}]},
		"want": [{
			"subject": "driveline.engine",
			"missing": ["throttle", "tune.throttle", "car.throttle"],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(throttle_kind, "engines", each.want) with input as each.input
}
