package rules.event.papers_test

import data.lib.cases_test as trial
import data.rules.event.papers

cases := {
	"none, then some": {
		"input": {"cars": [{"path": "car", "papers": "log book 9", "none": ["papers"]}]},
		"want": [{"subject": "car", "at": "papers"}],
	},
	"none": {
		"input": {"cars": [{"path": "car", "none": ["papers"]}]},
		"want": [{"subject": "car", "at": "papers"}],
	},
	"a log book": {"input": {"cars": [{"path": "car", "papers": "log book 9"}]}, "want": []},
	"a log book, and no noise reading": {
		"input": {"cars": [{"path": "car", "papers": "log book 9", "none": ["noise"]}]},
		"want": [],
	},
	"not said": {
		"input": {"cars": [{"path": "car", "none": ["noise"]}]},
		"want": [{"subject": "car", "missing": ["papers"]}],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{"subject": "car", "missing": ["papers"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(papers, "cars", each.want) with input as each.input
}
