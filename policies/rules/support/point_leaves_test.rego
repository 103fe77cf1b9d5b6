package rules.support.point_leaves_test

import data.lib.cases_test as trial
import data.rules.support.point_leaves

cases := {
	"under the gearbox": {
		"input": {"stands": [{"path": "support.stands.middle", "under": "driveline.gearbox", "leaves": true}]},
		"want": [{"subject": "support.stands.middle", "at": "under", "figures": {"under": "driveline.gearbox"}}],
	},
	"under what stays": {
		"input": {"stands": [{"path": "support.stands.middle", "under": "driveline.gearbox", "leaves": false}]},
		"want": [],
	},
	"not said": {
		"input": {"stands": [{"path": "support.stands.middle", "leaves": false}]},
		"want": [{"subject": "support.stands.middle", "missing": ["under"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(point_leaves, "stands", each.want) with input as each.input
}
