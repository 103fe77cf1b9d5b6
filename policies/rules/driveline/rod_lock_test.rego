package rules.driveline.rod_lock_test

import data.lib.cases_test as trial
import data.rules.driveline.rod_lock

cases := {
	"jam nuts": {"input": {"rods": [{"path": "rods.shift", "lock": "jam-nut"}]}, "want": []},
	"unlocked": {
		"input": {"rods": [{"path": "rods.shift", "lock": "unlocked"}]},
		"want": [{"subject": "rods.shift", "at": "lock"}],
	},
	"none": {
		"input": {"rods": [{"path": "rods.shift", "none": ["lock"]}]},
		"want": [{"subject": "rods.shift", "at": "lock"}],
	},
	"none of something else": {
		"input": {"rods": [{"path": "rods.shift", "lock": "jam-nut", "none": ["length"]}]},
		"want": [],
	},
	"not said, and none of something else": {
		"input": {"rods": [{"path": "rods.shift", "none": ["length"]}]},
		"want": [{"subject": "rods.shift", "missing": ["lock"]}],
	},
	"not said": {
		"input": {"rods": [{"path": "rods.shift"}]},
		"want": [{"subject": "rods.shift", "missing": ["lock"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rod_lock, "rods", each.want) with input as each.input
}
