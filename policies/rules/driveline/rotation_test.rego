package rules.driveline.rotation_test

import data.lib.cases_test as trial
import data.rules.driveline.rotation

cases := {
	"against one another": {
		"input": {"gearbox": [{"path": "driveline.gearbox", "engine": {"rotation": "clockwise"}, "final_drive": {"path": "final-drive", "turns": "anticlockwise"}}]},
		"want": [{
			"subject": "driveline.gearbox",
			"at": "engine.rotation",
			"also": ["final-drive"],
			"figures": {"engine": "clockwise", "axle": "anticlockwise"},
		}],
	},
	"together": {
		"input": {"gearbox": [{"path": "driveline.gearbox", "engine": {"rotation": "clockwise"}, "final_drive": {"path": "final-drive", "turns": "clockwise"}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"gearbox": [{"path": "driveline.gearbox"}]},
		"want": [{"subject": "driveline.gearbox", "missing": ["engine.rotation", "final_drive.turns"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rotation, "gearbox", each.want) with input as each.input
}
