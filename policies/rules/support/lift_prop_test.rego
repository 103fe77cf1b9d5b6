package rules.support.lift_prop_test

import data.lib.cases_test as trial
import data.rules.support.lift_prop

cases := {
	"no prop": {
		"input": {"support": [{"path": "support", "held_by": ["Two-post lift"], "none": ["prop"]}]},
		"want": [{"subject": "support", "at": "prop", "figures": {}}],
	},
	"on a lift with four posts": {
		"input": {"support": [{"path": "support", "held_by": ["four-post lift"], "none": ["prop"]}]},
		"want": [],
	},
	"propped": {
		"input": {"support": [{"path": "support", "held_by": ["two-post lift"], "prop": "tall prop under the axle", "none": ["frame"]}]},
		"want": [],
	},
	"prop not said": {
		"input": {"support": [{"path": "support", "held_by": ["two-post lift"]}]},
		"want": [{"subject": "support", "missing": ["prop"]}],
	},
	"nothing said": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["held_by"]}],
	},
	"four posts, and no more said": {
		"input": {"support": [{"path": "support", "held_by": ["four-post lift"]}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(lift_prop, "support", each.want) with input as each.input
}
