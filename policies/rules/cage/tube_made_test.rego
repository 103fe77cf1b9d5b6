package rules.cage.tube_made_test

import data.lib.cases_test as trial
import data.rules.cage.tube_made

cases := {
	"both cold drawn": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"made": "cold-drawn"},
					"other_tube": {"made": "cold-drawn"},
				},
			}],
		},
		"want": [],
	},
	"welded main hoop": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {"main_tube": {"made": "welded"}, "other_tube": {"made": "cold-drawn"}},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "main",
			"at": "cage.main_tube",
			"figures": {"made": "welded"},
		}],
	},
	"hot-finished braces": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"made": "cold-drawn"},
					"other_tube": {"made": "hot-finished"},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "other",
			"at": "cage.other_tube",
			"figures": {"made": "hot-finished"},
		}],
	},
	"no cage": {"input": {"cars": [{"path": "car", "none": ["cage"]}]}, "want": []},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{"subject": "car", "missing": ["cage.main_tube.made", "cage.other_tube.made"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(tube_made, "cars", each.want) with input as each.input
}
