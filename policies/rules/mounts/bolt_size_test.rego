package rules.mounts.bolt_size_test

import data.lib.cases_test as trial
import data.rules.mounts.bolt_size

m10 := {"major": 0.01, "text": "M10x1.5"}

m10_fine := {"major": 0.01, "text": "M10x1.25"}

cases := {
	"another pitch in the driveline": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"thread": m10}, "holes": {"clear": 0.01}, "there": {"path": "driveline.mounts.left", "holes": {"thread": m10_fine}}}]},
		"want": [{"subject": "mounts.left", "at": "bolts.thread", "case": "thread", "figures": {"bolt": "M10x1.5", "hole": "M10x1.25"}}],
	},
	"the thread of the driveline": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"thread": m10}, "holes": {"clear": 0.01}, "there": {"path": "driveline.mounts.left", "holes": {"thread": m10}}}]},
		"want": [],
	},
	"another pitch in the bracket": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"thread": m10}, "holes": {"thread": m10_fine}, "there": {"path": "driveline.mounts.box", "holes": {"clear": 0.01}}}]},
		"want": [{"subject": "mounts.box", "at": "bolts.thread", "case": "thread", "figures": {"bolt": "M10x1.5", "hole": "M10x1.25"}}],
	},
	"the thread of the bracket": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"thread": m10}, "holes": {"thread": m10}, "there": {"path": "driveline.mounts.box", "holes": {"clear": 0.01}}}]},
		"want": [],
	},
	"too thick for the bracket": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"thread": m10}, "holes": {"clear": 0.009}, "there": {"path": "driveline.mounts.left", "holes": {"thread": m10}}}]},
		"want": [{"subject": "mounts.left", "at": "holes.clear", "case": "clear", "figures": {"bolt": "M10x1.5", "through": 0.009}}],
	},
	"too thick for the driveline": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"thread": m10}, "holes": {"thread": m10}, "there": {"path": "driveline.mounts.box", "holes": {"clear": 0.009}}}]},
		"want": [{
			"subject": "mounts.box",
			"at": "bolts.thread",
			"also": ["driveline.mounts.box"],
			"case": "clear",
			"figures": {"bolt": "M10x1.5", "through": 0.009},
		}],
	},
	"nothing said": {
		"input": {"mounts": [{"path": "mounts.box"}]},
		"want": [{"subject": "mounts.box", "missing": ["bolts.thread", "holes.thread|holes.clear", "there.holes.thread|there.holes.clear"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bolt_size, "mounts", each.want) with input as each.input
}
