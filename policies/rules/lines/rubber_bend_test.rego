package rules.lines.rubber_bend_test

import data.lib.cases_test as trial
import data.rules.lines.rubber_bend

cases := {
	"tighter than the standard": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"liner": "nitrile"},
				"from": {"half": {"dash": 8}},
				"tightest_bend": 0.117,
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "tightest_bend",
			"figures": {"radius": 0.117, "least": 0.117602},
		}],
	},
	"as tight as the standard": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"liner": "nitrile"},
				"from": {"half": {"dash": 8}},
				"tightest_bend": 0.117602,
			}],
		},
		"want": [],
	},
	"declared": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"liner": "nitrile", "bend": 0.05},
				"from": {"half": {"dash": 8}},
				"tightest_bend": 0.08,
			}],
		},
		"want": [],
	},
	"a lined hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"liner": "PTFE"},
				"from": {"half": {"dash": 8}},
				"tightest_bend": 0.05,
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"liner": "nitrile"}}]},
		"want": [{"subject": "lines.feed", "missing": ["tightest_bend", "from.half.dash"]}],
	},
	"liner not known": {
		"input": {
			"lines": [{"path": "lines.feed", "from": {"half": {"dash": 8}}, "tightest_bend": 0.05}],
		},
		"want": [{"subject": "lines.feed", "missing": ["kind.liner"]}],
	},
	"declared, liner not known": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"bend": 0.05}}]},
		"want": [],
	},
	"declared, and no more said": {
		"input": {"lines": [{"path": "lines.other", "kind": {"bend": 0.05, "liner": "nitrile"}}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
	"a lined hose that says no more": {
		"input": {"lines": [{"path": "lines.other", "kind": {"liner": "PTFE"}}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rubber_bend, "lines", each.want) with input as each.input
}
