package rules.mounts.rock_room_test

import data.lib.cases_test as trial
import data.rules.mounts.rock_room

cases := {
	"just clears": {
		"input": {
			"gaps": [{
				"path": "gaps.sump",
				"moves": true,
				"between": ["driveline.solids.block", "solids.beam"],
				"is": 0.009,
				"fit": {"rocks": 0.009},
			}],
		},
		"want": [],
	},
	"hits": {
		"input": {
			"gaps": [{
				"path": "gaps.sump",
				"moves": true,
				"between": ["driveline.solids.block", "solids.beam"],
				"is": 0.008,
				"fit": {"rocks": 0.009},
			}],
		},
		"want": [{"subject": "gaps.sump", "at": "is", "figures": {"gap": 0.008, "rocks": 0.009}}],
	},
	"between two parts of the car": {
		"input": {
			"gaps": [{
				"path": "gaps.sump",
				"moves": false,
				"between": ["driveline.solids.block", "solids.beam"],
				"is": 0.001,
				"fit": {"rocks": 0.009},
			}],
		},
		"want": [{"subject": "gaps.sump", "judged": false}],
	},
	"not said between what": {
		"input": {
			"gaps": [{"path": "gaps.sump", "moves": false, "is": 0.009, "fit": {"rocks": 0.009}}],
		},
		"want": [{"subject": "gaps.sump", "missing": ["between"]}],
	},
	"nothing said": {
		"input": {
			"gaps": [{
				"path": "gaps.sump",
				"moves": true,
				"between": ["driveline.solids.block", "solids.beam"],
			}],
		},
		"want": [{"subject": "gaps.sump", "missing": ["is", "fit.rocks"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rock_room, "gaps", each.want) with input as each.input
}
