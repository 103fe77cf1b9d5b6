package rules.electrics.generator_load_test

import data.lib.cases_test as trial
import data.rules.electrics.generator_load

cases := {
	"four fifths": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"total_loss": false,
				"engine": {"path": "driveline.engine", "alternator": 50},
				"calc": {"load": 40, "alternator_share": 0.8},
			}],
		},
		"want": [],
	},
	"a little more": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"total_loss": false,
				"engine": {"path": "driveline.engine", "alternator": 50},
				"calc": {"load": 40, "alternator_share": 0.804},
			}],
		},
		"want": [{
			"subject": "electrics",
			"also": ["driveline.engine"],
			"figures": {"load": 40, "alternator": 50},
		}],
	},
	"nothing said of total loss": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"engine": {"path": "driveline.engine", "alternator": 50},
				"calc": {"load": 40, "alternator_share": 0.9},
			}],
		},
		"want": [{"subject": "electrics", "figures": {"load": 40, "alternator": 50}}],
	},
	"total loss": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"total_loss": true,
				"engine": {"path": "driveline.engine", "alternator": 50},
				"calc": {"load": 40, "alternator_share": 0.9},
			}],
		},
		"want": [{"subject": "electrics", "judged": false}],
	},
	"nothing known": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"total_loss": false,
				"engine": {"path": "driveline.engine", "alternator": 50},
			}],
		},
		"want": [{"subject": "electrics", "missing": ["calc.load", "calc.alternator_share"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(generator_load, "electrics", each.want) with input as each.input
}
