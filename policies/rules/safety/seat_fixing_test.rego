package rules.safety.seat_fixing_test

import data.lib.cases_test as trial
import data.rules.safety.seat_fixing

cases := {
	"four of M8": {
		"input": {
			"cars": [{
				"path": "car",
				"safety": {
					"seat": {
						"fixing": {"count": 4, "thread": {"text": "M8x1.25", "major": 0.008}},
					},
				},
			}],
		},
		"want": [],
	},
	"three": {
		"input": {
			"cars": [{
				"path": "car",
				"safety": {
					"seat": {
						"fixing": {"count": 3, "thread": {"text": "M8x1.25", "major": 0.008}},
					},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "few",
			"at": "safety.seat.fixing",
			"figures": {"count": 3},
		}],
	},
	"five-sixteenths": {
		"input": {
			"cars": [{
				"path": "car",
				"safety": {
					"seat": {
						"fixing": {"count": 4, "thread": {"text": "M8x1.25", "major": 0.0079375}},
					},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "thin",
			"at": "safety.seat.fixing",
			"figures": {"bolt": "M8x1.25", "least": 0.008},
		}],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{
			"subject": "car",
			"missing": ["safety.seat.fixing.count", "safety.seat.fixing.thread"],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(seat_fixing, "cars", each.want) with input as each.input
}
