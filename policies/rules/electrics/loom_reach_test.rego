package rules.electrics.loom_reach_test

import data.lib.cases_test as trial
import data.rules.electrics.loom_reach

cases := {
	"just reaches": {
		"input": {
			"looms": [{
				"path": "plugs.loom-a",
				"port": {"path": "driveline.ports.loom-a"},
				"calc": {"reach": 0.7, "distance": 0.7},
			}],
		},
		"want": [],
	},
	"short": {
		"input": {
			"looms": [{
				"path": "plugs.loom-a",
				"port": {"path": "driveline.ports.loom-a"},
				"calc": {"reach": 0.69, "distance": 0.7},
			}],
		},
		"want": [{
			"subject": "plugs.loom-a",
			"at": "tail",
			"also": ["driveline.ports.loom-a"],
			"figures": {"reach": 0.69, "distance": 0.7},
		}],
	},
	"nothing said": {
		"input": {"looms": [{"path": "plugs.loom-a", "port": {"path": "driveline.ports.loom-a"}}]},
		"want": [{"subject": "plugs.loom-a", "missing": ["calc.reach", "calc.distance"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(loom_reach, "looms", each.want) with input as each.input
}
