package rules.safety.isolator_mark_test

import data.lib.cases_test as trial
import data.rules.safety.isolator_mark

cases := {
	"none, then one": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"isolator": {"marked": "spark in a triangle", "none": ["marked"]},
			}],
		},
		"want": [{"subject": "electrics", "at": "isolator.marked"}],
	},
	"none": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"none": ["marked"]}}]},
		"want": [{"subject": "electrics", "at": "isolator.marked"}],
	},
	"marked": {
		"input": {
			"electrics": [{"path": "electrics", "isolator": {"marked": "spark in a triangle"}}],
		},
		"want": [],
	},
	"marked, and no rating": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"isolator": {"marked": "spark in a triangle", "none": ["steady"]},
			}],
		},
		"want": [],
	},
	"not said, and no rating": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"none": ["steady"]}}]},
		"want": [{"subject": "electrics", "missing": ["isolator.marked"]}],
	},
	"not said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{"subject": "electrics", "missing": ["isolator.marked"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(isolator_mark, "electrics", each.want) with input as each.input
}
