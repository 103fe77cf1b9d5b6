package rules.mounts.bolt_count_test

import data.lib.cases_test as trial
import data.rules.mounts.bolt_count

cases := {
	"three bolts in four holes": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"count": 3}, "holes": {"count": 4}, "there": {"holes": {"count": 4}}}]},
		"want": [{"subject": "mounts.box", "at": "bolts.count", "figures": {"bolts": 3, "holes": 4}}],
	},
	"four bolts in four holes": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"count": 4}, "holes": {"count": 4}, "there": {"holes": {"count": 4}}}]},
		"want": [],
	},
	"four holes against three": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"count": 3}, "holes": {"count": 4}, "there": {"holes": {"count": 3}}}]},
		"want": [],
	},
	"three holes against four": {
		"input": {"mounts": [{"path": "mounts.box", "bolts": {"count": 3}, "holes": {"count": 3}, "there": {"holes": {"count": 4}}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"mounts": [{"path": "mounts.box"}]},
		"want": [{"subject": "mounts.box", "missing": ["bolts.count", "holes.count", "there.holes.count"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bolt_count, "mounts", each.want) with input as each.input
}
