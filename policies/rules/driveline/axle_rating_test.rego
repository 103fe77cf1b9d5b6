package rules.driveline.axle_rating_test

import data.lib.cases_test as trial
import data.rules.driveline.axle_rating

cases := {
	"over": {
		"input": {"gearbox": [{"path": "driveline.gearbox", "calc": {"axle_torque": 1401}, "final_drive": {"path": "final-drive", "rated": 1400}}]},
		"want": [{
			"subject": "driveline.gearbox",
			"at": "final_drive.rated",
			"also": ["final-drive"],
			"figures": {"torque": 1401, "rated": 1400},
		}],
	},
	"at its rating": {
		"input": {"gearbox": [{"path": "driveline.gearbox", "calc": {"axle_torque": 1400}, "final_drive": {"path": "final-drive", "rated": 1400}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"gearbox": [{"path": "driveline.gearbox"}]},
		"want": [{"subject": "driveline.gearbox", "missing": ["calc.axle_torque", "final_drive.rated"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(axle_rating, "gearbox", each.want) with input as each.input
}
