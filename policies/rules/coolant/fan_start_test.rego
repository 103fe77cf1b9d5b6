package rules.coolant.fan_start_test

import data.lib.cases_test as trial
import data.rules.coolant.fan_start

cases := {
	"alike": {
		"input": {
			"cooling": [{
				"path": "cooling",
				"fan": {"on_at": 353.15},
				"engine": {"path": "driveline.engine", "thermostat": 353.15},
			}],
		},
		"want": [],
	},
	"fan first": {
		"input": {
			"cooling": [{
				"path": "cooling",
				"fan": {"on_at": 352.15},
				"engine": {"path": "driveline.engine", "thermostat": 353.15},
			}],
		},
		"want": [{
			"subject": "cooling",
			"at": "fan.on_at",
			"also": ["driveline.engine"],
			"figures": {"on": 352.15, "opens": 353.15},
		}],
	},
	"no fan": {
		"input": {
			"cooling": [{
				"path": "cooling",
				"engine": {"path": "driveline.engine", "thermostat": 353.15},
				"none": ["fan"],
			}],
		},
		"want": [],
	},
	"nothing said": {
		"input": {"cooling": [{"path": "cooling"}]},
		"want": [{"subject": "cooling", "missing": ["fan.on_at", "engine.thermostat"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(fan_start, "cooling", each.want) with input as each.input
}
