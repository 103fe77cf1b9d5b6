package rules.fuel.blend_known_test

import data.lib.cases_test as trial
import data.rules.fuel.blend_known

cases := {
	"never tested": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"cell": {"filled_with": "E85", "none": ["ethanol_tested"]},
			}],
		},
		"want": [{"subject": "driveline.tune", "at": "cell.ethanol_tested"}],
	},
	"never tested, with a sensor": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"cell": {"filled_with": "E85", "none": ["ethanol_tested"]},
				"follows_fuel": true,
			}],
		},
		"want": [],
	},
	"tested": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"cell": {"filled_with": "E85", "ethanol_tested": "2026-03-01"},
			}],
		},
		"want": [],
	},
	"never tested petrol": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"cell": {"filled_with": "petrol", "none": ["ethanol_tested"]},
			}],
		},
		"want": [],
	},
	"petrol": {
		"input": {"tunes": [{"path": "driveline.tune", "cell": {"filled_with": "petrol"}}]},
		"want": [],
	},
	"sensor, and nothing else": {
		"input": {"tunes": [{"path": "driveline.tune", "follows_fuel": true}]},
		"want": [],
	},
	"test not said": {
		"input": {"tunes": [{"path": "driveline.tune", "cell": {"filled_with": "E85"}}]},
		"want": [{"subject": "driveline.tune", "missing": ["cell.ethanol_tested"]}],
	},
	"fuel not said": {
		"input": {"tunes": [{"path": "driveline.tune", "cell": {"none": ["ethanol_tested"]}}]},
		"want": [{"subject": "driveline.tune", "missing": ["cell.filled_with"]}],
	},
	"sensor, and test not said": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"cell": {"filled_with": "E85"},
				"follows_fuel": true,
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(blend_known, "tunes", each.want) with input as each.input
}
