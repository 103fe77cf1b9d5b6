package rules.brakes.shared_reservoir_test

import data.lib.cases_test as trial
import data.rules.brakes.shared_reservoir

cases := {
	"mineral oil beside glycol": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "DOT 4",
				"reservoir": {"holds": 0.0003},
				"clutch": {"path": "clutch", "fluid": "mineral"},
			}],
		},
		"want": [{
			"subject": "brakes",
			"at": "reservoir",
			"also": ["clutch"],
			"figures": {"brakes": "DOT 4", "clutch": "mineral"},
		}],
	},
	"glycol beside mineral oil": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "mineral",
				"reservoir": {"holds": 0.0003},
				"clutch": {"path": "clutch", "fluid": "DOT 4"},
			}],
		},
		"want": [{"subject": "brakes", "figures": {"brakes": "mineral", "clutch": "DOT 4"}}],
	},
	"two glycol fluids": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "DOT 4",
				"reservoir": {"holds": 0.0003},
				"clutch": {"path": "clutch", "fluid": "DOT 5.1"},
			}],
		},
		"want": [],
	},
	"silicone beside mineral oil": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "DOT 5 silicone",
				"reservoir": {"holds": 0.0003},
				"clutch": {"path": "clutch", "fluid": "mineral"},
			}],
		},
		"want": [{
			"subject": "brakes",
			"figures": {"brakes": "DOT 5 silicone", "clutch": "mineral"},
		}],
	},
	"one fluid": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "mineral",
				"reservoir": {"holds": 0.0003},
				"clutch": {"path": "clutch", "fluid": "mineral"},
			}],
		},
		"want": [],
	},
	"none shared": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "DOT 4",
				"clutch": {"path": "clutch", "fluid": "mineral"},
				"none": ["reservoir"],
			}],
		},
		"want": [],
	},
	"not said whether it is shared": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"fluid": "DOT 4",
				"clutch": {"path": "clutch", "fluid": "mineral"},
			}],
		},
		"want": [{"subject": "brakes", "missing": ["reservoir"]}],
	},
	"nothing said": {
		"input": {"brakes": [{"path": "brakes"}]},
		"want": [{"subject": "brakes", "missing": ["fluid", "clutch.fluid"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(shared_reservoir, "brakes", each.want) with input as each.input
}
