package rules.support.light_stand_test

import data.lib.cases_test as trial
import data.rules.support.light_stand

cases := {
	"easily toppled": {
		"input": {"stands": [{"path": "support.stands.front-left", "calc": {"push": 449}}]},
		"want": [{"subject": "support.stands.front-left", "at": "stand", "figures": {"push": 449, "pull": 450}}],
	},
	"hard to topple": {
		"input": {"stands": [{"path": "support.stands.front-left", "calc": {"push": 450}}]},
		"want": [],
	},
	"not known": {
		"input": {"stands": [{"path": "support.stands.front-left"}]},
		"want": [{"subject": "support.stands.front-left", "missing": ["calc.push"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(light_stand, "stands", each.want) with input as each.input
}
