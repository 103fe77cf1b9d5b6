package rules.mounts.bolt_class_test

import data.lib.cases_test as trial
import data.rules.mounts.bolt_class

cases := {
	"mild steel": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"class": "4.6"}}]},
		"want": [{"subject": "mounts.left", "at": "bolts.class", "case": "soft", "figures": {"class": "4.6"}}],
	},
	"stainless": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"class": "A2-70"}}]},
		"want": [{"subject": "mounts.left", "at": "bolts.class", "case": "middling", "figures": {"class": "A2-70"}}],
	},
	"high tensile": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"class": "8.8"}}]},
		"want": [],
	},
	"stainless under a box": {
		"input": {"mounts": [{"path": "mounts.computer", "bolts": {"class": "A2-70"}, "there": {"light": true}}]},
		"want": [],
	},
	"mild steel under a box": {
		"input": {"mounts": [{"path": "mounts.computer", "bolts": {"class": "4.6"}, "there": {"light": true}}]},
		"want": [],
	},
	"nothing said of the class of a box's screws": {
		"input": {"mounts": [{"path": "mounts.computer", "there": {"light": true}}]},
		"want": [],
	},
	"class not said": {
		"input": {"mounts": [{"path": "mounts.left", "bolts": {"count": 2}}]},
		"want": [{"subject": "mounts.left", "missing": ["bolts.class"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bolt_class, "mounts", each.want) with input as each.input
}
