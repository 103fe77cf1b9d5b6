package rules.mounts.hole_count_test

import data.lib.cases_test as trial
import data.rules.mounts.hole_count

cases := {
	"two holes against three": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 2}, "there": {"path": "driveline.mounts.left", "holes": {"count": 3}}}]},
		"want": [{
			"subject": "mounts.left",
			"at": "holes.count",
			"also": ["driveline.mounts.left"],
			"figures": {"here": 2, "there": 3},
		}],
	},
	"three holes each": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 3}, "there": {"path": "driveline.mounts.left", "holes": {"count": 3}}}]},
		"want": [],
	},
	"nothing said of holes": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left"}}]},
		"want": [{"subject": "mounts.left", "missing": ["holes.count", "there.holes.count"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hole_count, "mounts", each.want) with input as each.input
}
