package rules.fasteners.wheel_grip_test

import data.lib.cases_test as trial
import data.rules.fasteners.wheel_grip

cases := {
	"one diameter": {
		"input": {
			"fastenings": [{
				"path": "fasteners.wheels.bolts",
				"holds": "Road wheels",
				"engaged": 0.012,
				"thread": {"text": "M12x1.5", "major": 0.012},
			}],
		},
		"want": [],
	},
	"less": {
		"input": {
			"fastenings": [{
				"path": "fasteners.wheels.bolts",
				"holds": "Road wheels",
				"engaged": 0.0119,
				"thread": {"text": "M12x1.5", "major": 0.012},
			}],
		},
		"want": [{
			"subject": "fasteners.wheels.bolts",
			"at": "engaged",
			"figures": {"engaged": 0.0119, "stud": "M12x1.5"},
		}],
	},
	"a steering wheel": {
		"input": {
			"fastenings": [{
				"path": "fasteners.wheels.bolts",
				"holds": "steering wheel",
				"engaged": 0.006,
				"thread": {"text": "M12x1.5", "major": 0.012},
			}],
		},
		"want": [{"subject": "fasteners.wheels.bolts", "judged": false}],
	},
	"not said what it holds": {
		"input": {
			"fastenings": [{
				"path": "fasteners.wheels.bolts",
				"engaged": 0.012,
				"thread": {"text": "M12x1.5", "major": 0.012},
			}],
		},
		"want": [{"subject": "fasteners.wheels.bolts", "missing": ["holds"]}],
	},
	"nothing said": {
		"input": {"fastenings": [{"path": "fasteners.wheels.bolts", "holds": "Road wheels"}]},
		"want": [{"subject": "fasteners.wheels.bolts", "missing": ["engaged", "thread"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(wheel_grip, "fastenings", each.want) with input as each.input
}
