package rules.driveline.hub_needs_shaft_test

import data.lib.cases_test as trial
import data.rules.driveline.hub_needs_shaft

cases := {
	"clamped by the shaft": {
		"input": {"cars": [{"path": "car", "final_drive": {"path": "final-drive", "shaft_clamps_hub": true}}]},
		"want": [{
			"subject": "car",
			"at": "final_drive.shaft_clamps_hub",
			"also": ["final-drive"],
			"figures": {},
		}],
	},
	"clamped by itself": {
		"input": {"cars": [{"path": "car", "final_drive": {"path": "final-drive", "shaft_clamps_hub": false}}]},
		"want": [],
	},
	"on stands": {
		"input": {"cars": [{"path": "car", "stage": "out and raised", "final_drive": {"path": "final-drive", "shaft_clamps_hub": true}}]},
		"want": [],
	},
	"on stands, and not said": {
		"input": {"cars": [{"path": "car", "stage": "out and raised"}]},
		"want": [],
	},
	"not said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{"subject": "car", "missing": ["final_drive.shaft_clamps_hub"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hub_needs_shaft, "cars", each.want) with input as each.input
}
