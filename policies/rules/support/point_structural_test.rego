package rules.support.point_structural_test

import data.lib.cases_test as trial
import data.rules.support.point_structural

cases := {
	"a weak place": {
		"input": {"stands": [{"path": "support.stands.front-left", "structural": false}]},
		"want": [{"subject": "support.stands.front-left", "at": "structural", "figures": {}}],
	},
	"a pad": {
		"input": {"stands": [{"path": "support.stands.front-left", "structural": true}]},
		"want": [],
	},
	"not said": {
		"input": {"stands": [{"path": "support.stands.front-left"}]},
		"want": [{"subject": "support.stands.front-left", "missing": ["structural"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(point_structural, "stands", each.want) with input as each.input
}
