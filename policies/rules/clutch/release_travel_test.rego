package rules.clutch.release_travel_test

import data.lib.cases_test as trial
import data.rules.clutch.release_travel

cases := {
	"over": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"calc": {"full_travel": 0.0091},
				"slave": {"frees_at": 0.007, "travel_max": 0.009},
			}],
		},
		"want": [{
			"subject": "clutch",
			"at": "master.stop",
			"case": "over",
			"figures": {"travel": 0.0091, "limit": 0.009},
		}],
	},
	"at the most": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"calc": {"full_travel": 0.009},
				"slave": {"frees_at": 0.007, "travel_max": 0.009},
			}],
		},
		"want": [],
	},
	"under": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"calc": {"full_travel": 0.0069},
				"slave": {"frees_at": 0.007, "travel_max": 0.009},
			}],
		},
		"want": [{
			"subject": "clutch",
			"at": "master.stop",
			"case": "under",
			"figures": {"travel": 0.0069, "limit": 0.007},
		}],
	},
	"at the least": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"calc": {"full_travel": 0.007},
				"slave": {"frees_at": 0.007, "travel_max": 0.009},
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"clutch": [{"path": "clutch", "fluid": "DOT 4"}]},
		"want": [{
			"subject": "clutch",
			"missing": ["calc.full_travel", "slave.travel_max", "slave.frees_at"],
		}],
	},
	"not known, and nobody looked for the fluid": {
		"input": {"clutch": [{"path": "clutch", "none": ["fluid"]}]},
		"want": [{
			"subject": "clutch",
			"missing": ["calc.full_travel", "slave.travel_max", "slave.frees_at"],
		}],
	},
	"a cable": {
		"input": {"clutch": [{"path": "clutch", "none": ["fluid", "master"]}]},
		"want": [{"subject": "clutch", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(release_travel, "clutch", each.want) with input as each.input
}
