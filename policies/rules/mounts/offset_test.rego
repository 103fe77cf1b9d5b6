package rules.mounts.offset_test

import data.lib.cases_test as trial
import data.rules.mounts.offset

there := {"path": "driveline.mounts.left"}

cases := {
	"further than it may be": {
		"input": {"mounts": [{"path": "mounts.left", "there": there, "calc": {"offset": 0.00301, "offset_towards": "forward"}}]},
		"want": [{
			"subject": "mounts.left",
			"at": "at",
			"also": ["driveline.mounts.left"],
			"figures": {"offset": 0.00301, "towards": "forward", "most": 0.003},
		}],
	},
	"as far as it may be": {
		"input": {"mounts": [{"path": "mounts.left", "there": there, "calc": {"offset": 0.003, "offset_towards": "forward"}}]},
		"want": [],
	},
	"a box on its loom": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left", "light": true}, "calc": {"offset": 0.00301, "offset_towards": "forward"}}]},
		"want": [],
	},
	"a box on its loom, of no place": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left", "light": true}}]},
		"want": [],
	},
	"not measured": {
		"input": {"mounts": [{"path": "mounts.left", "there": there}]},
		"want": [{"subject": "mounts.left", "missing": ["calc.offset"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(offset, "mounts", each.want) with input as each.input
}
