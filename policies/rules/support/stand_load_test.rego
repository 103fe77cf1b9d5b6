package rules.support.stand_load_test

import data.lib.cases_test as trial
import data.rules.support.stand_load

cases := {
	"over": {
		"input": {"stands": [{"path": "support.stands.front-left", "calc": {"load_most": 751, "capacity": 750}}]},
		"want": [{
			"subject": "support.stands.front-left",
			"at": "stand",
			"figures": {"load": 751, "capacity": 750},
		}],
	},
	"at its rating": {
		"input": {"stands": [{"path": "support.stands.front-left", "calc": {"load_most": 750, "capacity": 750}}]},
		"want": [],
	},
	"neither known": {
		"input": {"stands": [{"path": "support.stands.front-left"}]},
		"want": [{"subject": "support.stands.front-left", "missing": ["calc.load_most", "calc.capacity"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(stand_load, "stands", each.want) with input as each.input
}
