package rules.support.stand_height_test

import data.lib.cases_test as trial
import data.rules.support.stand_height

kind := {"height": [0.41, 0.58]}

cases := {
	"too low": {
		"input": {"stands": [{"path": "support.stands.front-left", "height": 0.4, "kind": kind}]},
		"want": [{
			"subject": "support.stands.front-left",
			"at": "height",
			"figures": {"height": 0.4, "lowest": 0.41, "highest": 0.58},
		}],
	},
	"lowest": {
		"input": {"stands": [{"path": "support.stands.front-left", "height": 0.41, "kind": kind}]},
		"want": [],
	},
	"highest": {
		"input": {"stands": [{"path": "support.stands.front-left", "height": 0.58, "kind": kind}]},
		"want": [],
	},
	"too high": {
		"input": {"stands": [{"path": "support.stands.front-left", "height": 0.59, "kind": kind}]},
		"want": [{
			"subject": "support.stands.front-left",
			"at": "height",
			"figures": {"height": 0.59, "lowest": 0.41, "highest": 0.58},
		}],
	},
	"not set yet": {
		"input": {"stands": [{"path": "support.stands.front-left"}]},
		"want": [{"subject": "support.stands.front-left", "missing": ["height", "kind.height"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(stand_height, "stands", each.want) with input as each.input
}
