package rules.support.stand_lock_test

import data.lib.cases_test as trial
import data.rules.support.stand_lock

cases := {
	"a ratchet": {
		"input": {"stands": [{"path": "support.stands.front-left", "kind": {"lock": "ratchet"}}]},
		"want": [{"subject": "support.stands.front-left", "at": "kind.lock", "figures": {}}],
	},
	"a ratchet and a pin": {
		"input": {"stands": [{"path": "support.stands.front-left", "kind": {"lock": "ratchet and pin"}}]},
		"want": [],
	},
	"not said": {
		"input": {"stands": [{"path": "support.stands.front-left", "kind": {"rated": 1500}}]},
		"want": [{"subject": "support.stands.front-left", "missing": ["kind.lock"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(stand_lock, "stands", each.want) with input as each.input
}
