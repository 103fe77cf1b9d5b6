package rules.mounts.unmet_test

import data.lib.cases_test as trial
import data.rules.mounts.unmet

cases := {
	"met by nothing": {
		"input": {"drive_mounts": [{"path": "driveline.mounts.left", "light": false, "settled": true}]},
		"want": [{"subject": "driveline.mounts.left"}],
	},
	"not said whether it is light": {
		"input": {"drive_mounts": [{"path": "driveline.mounts.left", "settled": true}]},
		"want": [{"subject": "driveline.mounts.left"}],
	},
	"met": {
		"input": {
			"drive_mounts": [{"path": "driveline.mounts.left", "light": false, "settled": true, "met_by": ["mounts.left"]}],
		},
		"want": [],
	},
	"a bracket that meets nobody knows what": {
		"input": {"drive_mounts": [
			{"path": "driveline.mounts.left", "light": false},
			{"path": "driveline.mounts.right", "light": false, "met_by": ["mounts.right"]},
			{"path": "driveline.mounts.computer", "light": true},
		]},
		"want": [{"subject": "driveline.mounts.left", "missing": ["settled"]}],
	},
	"a box on its loom": {
		"input": {"drive_mounts": [{"path": "driveline.mounts.left", "light": true, "settled": true}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(unmet, "drive_mounts", each.want) with input as each.input
}
