package rules.oil.cooler_heat_test

import data.lib.cases_test as trial
import data.rules.oil.cooler_heat

cases := {
	"too small": {
		"input": {
			"oil": [{"path": "oil", "cooler": {"sheds": 14000}, "needs": {"heat_oil": 15000}}],
		},
		"want": [{
			"subject": "oil",
			"at": "cooler.sheds",
			"figures": {"sheds": 14000, "heat": 15000},
		}],
	},
	"large enough": {
		"input": {
			"oil": [{"path": "oil", "cooler": {"sheds": 15000}, "needs": {"heat_oil": 15000}}],
		},
		"want": [],
	},
	"not known": {
		"input": {"oil": [{"path": "oil", "cooler": {"rated": 1000000}}]},
		"want": [{"subject": "oil", "missing": ["needs.heat_oil", "cooler.sheds"]}],
	},
	"no cooler and none asked": {
		"input": {"oil": [{"path": "oil", "none": ["cooler"], "needs": {"none": ["heat_oil"]}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(cooler_heat, "oil", each.want) with input as each.input
}
