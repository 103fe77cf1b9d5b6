package rules.brakes.left_shut_test

import data.lib.cases_test as trial
import data.rules.brakes.left_shut

cases := {
	"to the driveline": {
		"input": {
			"joints": [{
				"path": "lines.assist.to",
				"kind": "line",
				"service": "brake fluid",
				"boundary": true,
				"there": {"path": "driveline.ports.assist.end"},
			}],
		},
		"want": [{
			"subject": "lines.assist.to",
			"at": "meet.port",
			"also": ["driveline.ports.assist.end"],
		}],
	},
	"from part to part of the car": {
		"input": {
			"joints": [{
				"path": "lines.assist.to",
				"kind": "line",
				"service": "brake fluid",
				"boundary": false,
				"there": {"path": "driveline.ports.assist.end"},
			}],
		},
		"want": [],
	},
	"clutch fluid": {
		"input": {
			"joints": [{
				"path": "lines.assist.to",
				"kind": "line",
				"service": "clutch fluid",
				"boundary": true,
				"there": {"path": "driveline.ports.assist.end"},
			}],
		},
		"want": [{"subject": "lines.assist.to", "judged": false}],
	},
	"a rod": {
		"input": {
			"joints": [{
				"path": "lines.assist.to",
				"kind": "rod",
				"boundary": true,
				"there": {"path": "driveline.ports.assist.end"},
			}],
		},
		"want": [{"subject": "lines.assist.to", "judged": false}],
	},
	"service not said": {
		"input": {
			"joints": [{
				"path": "lines.assist.to",
				"kind": "line",
				"boundary": true,
				"there": {"path": "driveline.ports.assist.end"},
			}],
		},
		"want": [{"subject": "lines.assist.to", "missing": ["service"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(left_shut, "joints", each.want) with input as each.input
}
