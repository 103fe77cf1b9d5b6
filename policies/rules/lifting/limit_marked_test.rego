package rules.lifting.limit_marked_test

import data.lib.cases_test as trial
import data.rules.lifting.limit_marked

cases := {
	"a bare eye": {
		"input": {
			"gear": [{"path": "driveline.lift.front", "kind": "lift point", "marked": false}],
		},
		"want": [{"subject": "driveline.lift.front", "at": "marked"}],
	},
	"a stamped eye": {
		"input": {
			"gear": [{"path": "driveline.lift.front", "kind": "lift point", "marked": true}],
		},
		"want": [],
	},
	"a sling without its tag": {
		"input": {"gear": [{"path": "driveline.lift.front", "kind": "sling", "marked": false}]},
		"want": [{"subject": "driveline.lift.front", "at": "marked"}],
	},
	"a stand": {
		"input": {"gear": [{"path": "driveline.lift.front", "kind": "stand", "marked": false}]},
		"want": [{"subject": "driveline.lift.front", "judged": false}],
	},
	"not looked at": {
		"input": {"gear": [{"path": "driveline.lift.front", "kind": "lift point"}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["marked"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(limit_marked, "gear", each.want) with input as each.input
}
