package rules.electrics.battery_cranks_test

import data.lib.cases_test as trial
import data.rules.electrics.battery_cranks

cases := {
	"just enough": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"battery": {"cranks": 240},
				"engine": {"path": "driveline.engine", "cranking": 240},
			}],
		},
		"want": [],
	},
	"too weak": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"battery": {"cranks": 239},
				"engine": {"path": "driveline.engine", "cranking": 240},
			}],
		},
		"want": [{
			"subject": "electrics",
			"at": "battery.cranks",
			"also": ["driveline.engine"],
			"figures": {"gives": 239, "draws": 240},
		}],
	},
	"nothing said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{"subject": "electrics", "missing": ["battery.cranks", "engine.cranking"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(battery_cranks, "electrics", each.want) with input as each.input
}
