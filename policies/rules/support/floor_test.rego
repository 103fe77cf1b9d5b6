package rules.support.floor_test

import data.lib.cases_test as trial
import data.rules.support.floor

cases := {
	"grass": {
		"input": {"support": [{"path": "support", "floor": "grass"}]},
		"want": [{"subject": "support", "at": "floor", "figures": {"floor": "grass"}}],
	},
	"gravel": {
		"input": {"support": [{"path": "support", "floor": "gravel"}]},
		"want": [{"subject": "support", "figures": {"floor": "gravel"}}],
	},
	"a slope": {
		"input": {"support": [{"path": "support", "floor": "hard and sloping"}]},
		"want": [{"subject": "support", "figures": {"floor": "hard and sloping"}}],
	},
	"hard and level": {
		"input": {"support": [{"path": "support", "floor": "hard and level"}]},
		"want": [],
	},
	"not said": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["floor"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(floor, "support", each.want) with input as each.input
}
