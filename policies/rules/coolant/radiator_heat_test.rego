package rules.coolant.radiator_heat_test

import data.lib.cases_test as trial
import data.rules.coolant.radiator_heat

cases := {
	"too small": {
		"input": {
			"cooling": [{
				"path": "cooling",
				"radiator": {"sheds": 60000},
				"needs": {"heat_coolant": 62000},
			}],
		},
		"want": [{
			"subject": "cooling",
			"at": "radiator.sheds",
			"figures": {"sheds": 60000, "heat": 62000},
		}],
	},
	"large enough": {
		"input": {
			"cooling": [{
				"path": "cooling",
				"radiator": {"sheds": 62000},
				"needs": {"heat_coolant": 62000},
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"cooling": [{"path": "cooling", "header": {"cap": 100000}}]},
		"want": [{"subject": "cooling", "missing": ["needs.heat_coolant", "radiator.sheds"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(radiator_heat, "cooling", each.want) with input as each.input
}
