package rules.support.rocking_load_test

import data.lib.cases_test as trial
import data.rules.support.rocking_load

cases := {
	"over": {
		"input": {"stands": [{"path": "support.stands.front-left", "calc": {"rocking": 601, "capacity": 600}}]},
		"want": [{
			"subject": "support.stands.front-left",
			"at": "stand",
			"figures": {"load": 601, "capacity": 600},
		}],
	},
	"at its rating": {
		"input": {"stands": [{"path": "support.stands.front-left", "calc": {"rocking": 600, "capacity": 600}}]},
		"want": [],
	},
	"neither known": {
		"input": {"stands": [{"path": "support.stands.front-left"}]},
		"want": [{"subject": "support.stands.front-left", "missing": ["calc.rocking", "calc.capacity"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rocking_load, "stands", each.want) with input as each.input
}
