package rules.oil.catch_tank_test

import data.lib.cases_test as trial
import data.rules.oil.catch_tank

cases := {
	"vented and emptied": {
		"input": {
			"catch_tanks": [{
				"path": "oil.catch-tank",
				"kind": "oil",
				"vents": "filter on its lid",
				"emptied": "2026-05-02",
				"none": ["at"],
			}],
		},
		"want": [],
	},
	"closed": {
		"input": {
			"catch_tanks": [{
				"path": "oil.catch-tank",
				"kind": "oil",
				"vents": "filter on its lid",
				"emptied": "2026-05-02",
				"none": ["vents"],
			}],
		},
		"want": [{"subject": "oil.catch-tank", "case": "closed", "at": "vents"}],
	},
	"not emptied": {
		"input": {
			"catch_tanks": [{
				"path": "oil.catch-tank",
				"kind": "oil",
				"vents": "filter on its lid",
				"emptied": "2026-05-02",
				"none": ["emptied"],
			}],
		},
		"want": [{"subject": "oil.catch-tank", "case": "full", "at": "emptied"}],
	},
	"closed, with nothing to say": {
		"input": {
			"catch_tanks": [{
				"path": "oil.catch-tank",
				"kind": "oil",
				"emptied": "2026-05-02",
				"none": ["vents"],
			}],
		},
		"want": [{"subject": "oil.catch-tank", "case": "closed"}],
	},
	"not emptied, with nothing to say": {
		"input": {
			"catch_tanks": [{
				"path": "oil.catch-tank",
				"kind": "oil",
				"vents": "filter on its lid",
				"none": ["emptied"],
			}],
		},
		"want": [{"subject": "oil.catch-tank", "case": "full"}],
	},
	"not said when it was emptied": {
		"input": {
			"catch_tanks": [{"path": "oil.catch-tank", "kind": "oil", "vents": "filter on its lid"}],
		},
		"want": [{"subject": "oil.catch-tank", "missing": ["emptied"]}],
	},
	"nothing said of an overflow bottle": {
		"input": {"catch_tanks": [{"path": "oil.catch-tank", "kind": "coolant"}]},
		"want": [{"subject": "oil.catch-tank", "missing": ["vents"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(catch_tank, "catch_tanks", each.want) with input as each.input
}
