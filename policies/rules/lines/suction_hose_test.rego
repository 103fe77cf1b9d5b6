package rules.lines.suction_hose_test

import data.lib.cases_test as trial
import data.rules.lines.suction_hose

cases := {
	"pulls flat": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"pumped_by": "suction",
				"kind": {"holds_suction": false},
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.holds_suction"}],
	},
	"holds": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"pumped_by": "suction",
				"kind": {"holds_suction": true},
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "pumped_by": "suction"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.holds_suction"]}],
	},
	"not known what moves it": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"holds_suction": false}}]},
		"want": [{"subject": "lines.feed", "missing": ["pumped_by"]}],
	},
	"under pressure": {
		"input": {
			"lines": [{"path": "lines.feed", "pumped_by": "pump", "kind": {"holds_suction": false}}],
		},
		"want": [],
	},
	"under pressure, and no more said": {
		"input": {"lines": [{"path": "lines.other", "pumped_by": "pump"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(suction_hose, "lines", each.want) with input as each.input
}
