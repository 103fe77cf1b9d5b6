package rules.ballast.bolts_test

import data.lib.cases_test as trial
import data.rules.ballast.bolts

cases := {
	"two bolts and plates": {
		"input": {"ballast": [{"path": "ballast.nose", "bolts": {"count": 2}, "plate": 0.0045}]},
		"want": [],
	},
	"none of something else": {
		"input": {
			"ballast": [{
				"path": "ballast.nose",
				"bolts": {"count": 2},
				"plate": 0.0045,
				"none": ["at"],
			}],
		},
		"want": [],
	},
	"plate, and none": {
		"input": {
			"ballast": [{
				"path": "ballast.nose",
				"bolts": {"count": 2},
				"plate": 0.0045,
				"none": ["plate"],
			}],
		},
		"want": [{"subject": "ballast.nose", "case": "sheet"}],
	},
	"one bolt": {
		"input": {"ballast": [{"path": "ballast.nose", "bolts": {"count": 1}, "plate": 0.0045}]},
		"want": [{
			"subject": "ballast.nose",
			"case": "few",
			"at": "bolts",
			"figures": {"bolts": 1},
		}],
	},
	"no plate": {
		"input": {"ballast": [{"path": "ballast.nose", "bolts": {"count": 2}, "none": ["plate"]}]},
		"want": [{"subject": "ballast.nose", "case": "sheet", "at": "plate"}],
	},
	"not said, and nothing beside it": {
		"input": {"ballast": [{"path": "ballast.nose", "bolts": {"count": 2}, "none": ["at"]}]},
		"want": [{"subject": "ballast.nose", "missing": ["plate"]}],
	},
	"nothing said": {
		"input": {"ballast": [{"path": "ballast.nose"}]},
		"want": [{"subject": "ballast.nose", "missing": ["bolts.count", "plate"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bolts, "ballast", each.want) with input as each.input
}
