package rules.event.edition_test

import data.lib.cases_test as trial
import data.rules.event.edition

cases := {
	"alike": {
		"input": {
			"books": [{"path": "rulebooks.appendix-j", "edition": "2026", "event_edition": "2026"}],
		},
		"want": [],
	},
	"an older one": {
		"input": {
			"books": [{"path": "rulebooks.appendix-j", "edition": "2025", "event_edition": "2026"}],
		},
		"want": [{
			"subject": "rulebooks.appendix-j",
			"at": "edition",
			"figures": {"car": "2025", "event": "2026"},
		}],
	},
	"nothing said": {
		"input": {"books": [{"path": "rulebooks.appendix-j"}]},
		"want": [{"subject": "rulebooks.appendix-j", "missing": ["edition", "event_edition"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(edition, "books", each.want) with input as each.input
}
