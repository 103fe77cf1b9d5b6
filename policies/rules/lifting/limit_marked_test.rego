package rules.lifting.limit_marked_test

import data.lib.cases_test as trial
import data.rules.lifting.limit_marked

cases := {
	"bare": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "marked": false}]},
		"want": [{"subject": "driveline.lift.front", "at": "marked", "figures": {}}],
	},
	"stamped": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "marked": true}]},
		"want": [],
	},
	"not looked at": {
		"input": {"lift_points": [{"path": "driveline.lift.front"}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["marked"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(limit_marked, "lift_points", each.want) with input as each.input
}
