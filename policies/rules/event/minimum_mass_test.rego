package rules.event.minimum_mass_test

import data.lib.cases_test as trial
import data.rules.event.minimum_mass

cases := {
	"at the minimum": {
		"input": {
			"cars": [{"path": "car", "minimum_mass": 500, "calc": {"mass_with_driveline": 500}}],
		},
		"want": [],
	},
	"under it": {
		"input": {
			"cars": [{"path": "car", "minimum_mass": 500, "calc": {"mass_with_driveline": 499}}],
		},
		"want": [{"subject": "car", "at": "minimum_mass", "figures": {"mass": 499, "least": 500}}],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{"subject": "car", "missing": ["minimum_mass", "calc.mass_with_driveline"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(minimum_mass, "cars", each.want) with input as each.input
}
