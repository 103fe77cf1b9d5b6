package rules.exhaust.pipe_held_test

import data.lib.cases_test as trial
import data.rules.exhaust.pipe_held

cases := {
	"none, then one": {
		"input": {
			"exhaust_pipes": [{"path": "exhaust.pipes.tail", "held": {"count": 2}, "none": ["held"]}],
		},
		"want": [{"subject": "exhaust.pipes.tail", "at": "held"}],
	},
	"none": {
		"input": {"exhaust_pipes": [{"path": "exhaust.pipes.tail", "none": ["held"]}]},
		"want": [{"subject": "exhaust.pipes.tail", "at": "held"}],
	},
	"held": {
		"input": {"exhaust_pipes": [{"path": "exhaust.pipes.tail", "held": {"count": 2}}]},
		"want": [],
	},
	"held, and no wrap": {
		"input": {
			"exhaust_pipes": [{"path": "exhaust.pipes.tail", "held": {"count": 2}, "none": ["wrap"]}],
		},
		"want": [],
	},
	"not said, and no wrap": {
		"input": {"exhaust_pipes": [{"path": "exhaust.pipes.tail", "none": ["wrap"]}]},
		"want": [{"subject": "exhaust.pipes.tail", "missing": ["held"]}],
	},
	"not said": {
		"input": {"exhaust_pipes": [{"path": "exhaust.pipes.tail"}]},
		"want": [{"subject": "exhaust.pipes.tail", "missing": ["held"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pipe_held, "exhaust_pipes", each.want) with input as each.input
}
