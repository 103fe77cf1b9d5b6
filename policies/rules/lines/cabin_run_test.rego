package rules.lines.cabin_run_test

import data.lib.cases_test as trial
import data.rules.lines.cabin_run

cases := {
	"through the cabin": {
		"input": {"lines": [{"path": "lines.feed", "service": "coolant", "through": ["cabin"]}]},
		"want": [{"subject": "lines.feed", "at": "through", "figures": {"service": "coolant"}}],
	},
	"through the boot": {
		"input": {"lines": [{"path": "lines.feed", "service": "coolant", "through": ["boot"]}]},
		"want": [],
	},
	"the driveline's own": {
		"input": {"lines": [{"path": "lines.feed", "owner": "driveline", "service": "coolant", "through": ["cabin"]}]},
		"want": [],
	},
	"the driveline's own, nothing said": {
		"input": {"lines": [{"path": "lines.feed", "owner": "driveline"}]},
		"want": [],
	},
	"not said": {
		"input": {"lines": [{"path": "lines.feed", "service": "coolant"}]},
		"want": [{"subject": "lines.feed", "missing": ["through"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "through": ["cabin"]}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"fuel may pass": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "through": ["cabin"]}]},
		"want": [],
	},
	"the driveline's own coolant, that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "coolant", "owner": "driveline"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
	"fuel that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "fuel"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(cabin_run, "lines", each.want) with input as each.input
}
