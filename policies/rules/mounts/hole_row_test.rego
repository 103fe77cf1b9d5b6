package rules.mounts.hole_row_test

import data.lib.cases_test as trial
import data.rules.mounts.hole_row

there := {"path": "driveline.mounts.left", "holes": {"along": "fore-aft"}}

cases := {
	"across against fore-aft": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 2, "apart": 0.07, "along": "across"}, "there": there}]},
		"want": [{
			"subject": "mounts.left",
			"at": "holes.along",
			"also": ["driveline.mounts.left"],
			"figures": {"here": "across", "there": "fore-aft"},
		}],
	},
	"both fore-aft": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 2, "apart": 0.07, "along": "fore-aft"}, "there": there}]},
		"want": [],
	},
	"one hole": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 1, "along": "across"}, "there": there}]},
		"want": [],
	},
	"a circle": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"circle": 0.084, "along": "across"}, "there": there}]},
		"want": [],
	},
	"a square": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"apart": 0.08, "wide": 0.08, "along": "across"}, "there": there}]},
		"want": [],
	},
	"axis not said": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 2}, "there": {"path": "driveline.mounts.left"}}]},
		"want": [{"subject": "mounts.left", "missing": ["holes.along", "there.holes.along"]}],
	},
	"holes without an axis, and no more said": {
		"input": {"mounts": [
			{"path": "mounts.one", "holes": {"count": 1}, "there": there},
			{"path": "mounts.ring", "holes": {"circle": 0.084}, "there": there},
			{"path": "mounts.square", "holes": {"apart": 0.08, "wide": 0.08}, "there": there},
		]},
		"want": [
			{"subject": "mounts.one", "judged": false},
			{"subject": "mounts.ring", "judged": false},
			{"subject": "mounts.square", "judged": false},
		],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hole_row, "mounts", each.want) with input as each.input
}
