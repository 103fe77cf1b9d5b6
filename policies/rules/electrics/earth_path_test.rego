package rules.electrics.earth_path_test

import data.lib.cases_test as trial
import data.rules.electrics.earth_path

cases := {
	"none": {
		"input": {"electrics": [{"path": "electrics", "earths": []}]},
		"want": [{"subject": "electrics", "figures": {}}],
	},
	"one": {
		"input": {"electrics": [{"path": "electrics", "earths": ["engine-strap"]}]},
		"want": [],
	},
	"no circuits said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{"subject": "electrics", "missing": ["earths"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(earth_path, "electrics", each.want) with input as each.input
}
