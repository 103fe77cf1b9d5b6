package rules.fire.wall_holes_test

import data.lib.cases_test as trial
import data.rules.fire.wall_holes

cases := {
	"two": {
		"input": {"cars": [{"path": "car", "firewall": {"open_holes": ["old loom", "heater hose"]}}]},
		"want": [{
			"subject": "car",
			"at": "firewall.open_holes",
			"figures": {"holes": "old loom, heater hose"},
		}],
	},
	"one": {
		"input": {"cars": [{"path": "car", "firewall": {"open_holes": ["old loom"]}}]},
		"want": [{"subject": "car", "figures": {"holes": "old loom"}}],
	},
	"none left": {
		"input": {"cars": [{"path": "car", "firewall": {"open_holes": []}}]},
		"want": [],
	},
	"none": {
		"input": {"cars": [{"path": "car", "firewall": {"none": ["open_holes"]}}]},
		"want": [],
	},
	"not looked at": {
		"input": {"cars": [{"path": "car", "firewall": {"made_of": "1 mm steel"}}]},
		"want": [{"subject": "car", "missing": ["firewall.open_holes"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(wall_holes, "cars", each.want) with input as each.input
}
