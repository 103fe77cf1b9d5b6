package rules.fire.hand_fixing_test

import data.lib.cases_test as trial
import data.rules.fire.hand_fixing

cases := {
	"two straps, within reach": {
		"input": {
			"cars": [{
				"path": "car",
				"safety": {"hand_extinguisher": {"straps": 2, "reachable_belted": true}},
			}],
		},
		"want": [],
	},
	"one strap": {
		"input": {
			"cars": [{
				"path": "car",
				"safety": {"hand_extinguisher": {"straps": 1, "reachable_belted": true}},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "straps",
			"at": "safety.hand_extinguisher.straps",
			"figures": {"straps": 1},
		}],
	},
	"out of reach": {
		"input": {
			"cars": [{
				"path": "car",
				"safety": {"hand_extinguisher": {"straps": 2, "reachable_belted": false}},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "reach",
			"at": "safety.hand_extinguisher.reachable_belted",
		}],
	},
	"none on board": {
		"input": {"cars": [{"path": "car", "safety": {"none": ["hand_extinguisher"]}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{
			"subject": "car",
			"missing": [
				"safety.hand_extinguisher.straps",
				"safety.hand_extinguisher.reachable_belted",
			],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hand_fixing, "cars", each.want) with input as each.input
}
