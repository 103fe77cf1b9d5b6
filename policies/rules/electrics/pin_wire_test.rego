package rules.electrics.pin_wire_test

import data.lib.cases_test as trial
import data.rules.electrics.pin_wire

cases := {
	"alike": {
		"input": {
			"pins": [{
				"path": "pins.loom-a.A",
				"here": {"wire": 2.5e-06},
				"there": {"path": "driveline.pins.loom-a.A", "wire": 2.5e-06},
			}],
		},
		"want": [],
	},
	"thinner": {
		"input": {
			"pins": [{
				"path": "pins.loom-a.A",
				"here": {"wire": 1.5e-06},
				"there": {"path": "driveline.pins.loom-a.A", "wire": 2.5e-06},
			}],
		},
		"want": [{
			"subject": "pins.loom-a.A",
			"at": "here.wire",
			"also": ["driveline.pins.loom-a.A"],
			"figures": {"here": 1.5e-06, "there": 2.5e-06},
		}],
	},
	"thicker": {
		"input": {
			"pins": [{
				"path": "pins.loom-a.A",
				"here": {"wire": 4e-06},
				"there": {"path": "driveline.pins.loom-a.A", "wire": 2.5e-06},
			}],
		},
		"want": [],
	},
	"a signal": {
		"input": {
			"pins": [{
				"path": "pins.loom-a.A",
				"here": {"gives": "sensor earth"},
				"there": {"path": "driveline.pins.loom-a.A"},
			}],
		},
		"want": [{"subject": "pins.loom-a.A", "judged": true}],
	},
	"not wired here": {
		"input": {
			"pins": [{
				"path": "pins.loom-a.A",
				"there": {"path": "driveline.pins.loom-a.A", "wire": 2.5e-06},
			}],
		},
		"want": [{"subject": "pins.loom-a.A", "judged": true}],
	},
	"not said here": {
		"input": {
			"pins": [{
				"path": "pins.loom-a.A",
				"here": {"gives": "coil supply"},
				"there": {"path": "driveline.pins.loom-a.A", "wire": 2.5e-06},
			}],
		},
		"want": [{"subject": "pins.loom-a.A", "missing": ["here.wire"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pin_wire, "pins", each.want) with input as each.input
}
