package rules.mounts.bolt_length_test

import data.lib.cases_test as trial
import data.rules.mounts.bolt_length

cases := {
	"past the thread": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left"}, "calc": {"bottoms_by": 0.0001005}}]},
		"want": [{
			"subject": "mounts.left",
			"at": "bolts.length",
			"also": ["driveline.mounts.left"],
			"figures": {"past": 0.0001005},
		}],
	},
	"as near as can be measured": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left"}, "calc": {"bottoms_by": 0.0001}}]},
		"want": [],
	},
	"with a nut": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"nut": "nut"}, "there": {"path": "driveline.mounts.left"}, "calc": {"bottoms_by": 0.01}}]},
		"want": [],
	},
	"through a plain hole": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left", "holes": {"clear": 0.0105}}, "calc": {"bottoms_by": 0.01}}]},
		"want": [],
	},
	"depth not measured, with a nut": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"nut": "nut"}}]},
		"want": [],
	},
	"depth not measured, through a plain hole": {
		"input": {"mounts": [{"path": "mounts.left", "there": {"path": "driveline.mounts.left", "holes": {"clear": 0.0105}}}]},
		"want": [],
	},
	"depth not measured": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"length": 0.035}}]},
		"want": [{"subject": "mounts.left", "missing": ["calc.bottoms_by"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bolt_length, "mounts", each.want) with input as each.input
}
