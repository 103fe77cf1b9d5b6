package rules.driveline.shift_travel_test

import data.lib.cases_test as trial
import data.rules.driveline.shift_travel

cases := {
	"alike": {
		"input": {
			"rods": [{
				"path": "rods.shift",
				"from": {"port": "driveline.shift"},
				"to": {"port": "gearbox.lever.foot"},
				"lever": {"throw": 0.013},
				"port": {"path": "driveline.ports.shift", "stroke": 0.013},
			}],
		},
		"want": [],
	},
	"short": {
		"input": {
			"rods": [{
				"path": "rods.shift",
				"from": {"port": "driveline.shift"},
				"to": {"port": "gearbox.lever.foot"},
				"lever": {"throw": 0.012},
				"port": {"path": "driveline.ports.shift", "stroke": 0.013},
			}],
		},
		"want": [{
			"subject": "rods.shift",
			"at": "lever.throw",
			"also": ["driveline.ports.shift"],
			"figures": {"throw": 0.012, "stroke": 0.013},
		}],
	},
	"another rod": {
		"input": {
			"rods": [{
				"path": "rods.shift",
				"from": {"port": "driveline.shift"},
				"to": {"port": "gearbox.lever.foot"},
				"port": {"path": "driveline.ports.shift", "stroke": 0.013},
			}],
		},
		"want": [{"subject": "rods.shift", "judged": true}],
	},
	"throw not said": {
		"input": {
			"rods": [{
				"path": "rods.shift",
				"from": {"port": "driveline.shift"},
				"to": {"port": "gearbox.lever.foot"},
				"lever": {"at": [0, 0, 0]},
				"port": {"path": "driveline.ports.shift", "stroke": 0.013},
			}],
		},
		"want": [{"subject": "rods.shift", "missing": ["lever.throw"]}],
	},
	"an end not said": {
		"input": {"rods": [{"path": "rods.shift"}]},
		"want": [{"subject": "rods.shift", "missing": ["from.port", "to.port"]}],
	},
	"nothing said": {
		"input": {"rods": [{"path": "rods.shift", "from": {"port": "driveline.shift"}, "to": {"port": "gearbox.lever.foot"}, "lever": {"at": [0, 0, 0]}}]},
		"want": [{"subject": "rods.shift", "missing": ["lever.throw", "port.stroke"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(shift_travel, "rods", each.want) with input as each.input
}
