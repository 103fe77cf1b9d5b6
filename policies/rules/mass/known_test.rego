package rules.mass.known_test

import data.lib.cases_test as trial
import data.rules.mass.known

cases := {
	"within an inch": {
		"input": {"weighings": [{"path": "weighing", "of": "car", "unsure": 0.025}]},
		"want": [],
	},
	"rough": {
		"input": {"weighings": [{"path": "weighing", "of": "car", "unsure": 0.0251}]},
		"want": [{
			"subject": "weighing",
			"at": "unsure",
			"figures": {"of": "car", "unsure": 0.0251},
		}],
	},
	"not said": {
		"input": {"weighings": [{"path": "weighing", "of": "car"}]},
		"want": [{"subject": "weighing", "missing": ["unsure"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(known, "weighings", each.want) with input as each.input
}
