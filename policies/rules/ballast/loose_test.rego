package rules.ballast.loose_test

import data.lib.cases_test as trial
import data.rules.ballast.loose

cases := {
	"no bolts": {
		"input": {"ballast": [{"path": "ballast.nose", "none": ["bolts"]}]},
		"want": [{"subject": "ballast.nose", "at": "bolts"}],
	},
	"bolted": {"input": {"ballast": [{"path": "ballast.nose", "bolts": {"count": 2}}]}, "want": []},
	"bolts, and none": {
		"input": {"ballast": [{"path": "ballast.nose", "none": ["bolts"], "bolts": {"count": 2}}]},
		"want": [{"subject": "ballast.nose", "at": "bolts"}],
	},
	"none of something else": {
		"input": {"ballast": [{"path": "ballast.nose", "none": ["plate"], "bolts": {"count": 2}}]},
		"want": [],
	},
	"not said, and no plate": {
		"input": {"ballast": [{"path": "ballast.nose", "none": ["plate"]}]},
		"want": [{"subject": "ballast.nose", "missing": ["bolts"]}],
	},
	"nothing said": {
		"input": {"ballast": [{"path": "ballast.nose"}]},
		"want": [{"subject": "ballast.nose", "missing": ["bolts"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(loose, "ballast", each.want) with input as each.input
}
