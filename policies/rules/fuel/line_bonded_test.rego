package rules.fuel.line_bonded_test

import data.lib.cases_test as trial
import data.rules.fuel.line_bonded

cases := {
	"not bonded": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "bonded": false}]},
		"want": [{"subject": "lines.feed", "at": "bonded"}],
	},
	"bonded": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "bonded": true}]},
		"want": [],
	},
	"not said": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["bonded"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "bonded": false}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"oil": {
		"input": {"lines": [{"path": "lines.feed", "service": "engine oil", "bonded": false}]},
		"want": [],
	},
	"an oil line that says no more": {
		"input": {"lines": [{"path": "lines.oil", "service": "engine oil"}]},
		"want": [{"subject": "lines.oil", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(line_bonded, "lines", each.want) with input as each.input
}
