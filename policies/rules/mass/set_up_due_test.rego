package rules.mass.set_up_due_test

import data.lib.cases_test as trial
import data.rules.mass.set_up_due

cases := {
	"ten kilograms": {
		"input": {
			"cars": [{
				"path": "car",
				"set_up": {"mass": 900},
				"calc": {"mass_with_driveline": 910, "mass_since_set_up": 10},
			}],
		},
		"want": [],
	},
	"more": {
		"input": {
			"cars": [{
				"path": "car",
				"set_up": {"mass": 900},
				"calc": {"mass_with_driveline": 910, "mass_since_set_up": 10.05},
			}],
		},
		"want": [{"subject": "car", "at": "set_up.mass", "figures": {"now": 910, "then": 900}}],
	},
	"not known": {
		"input": {"cars": [{"path": "car", "set_up": {"mass": 900}}]},
		"want": [{"subject": "car", "missing": ["calc.mass_since_set_up"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(set_up_due, "cars", each.want) with input as each.input
}
