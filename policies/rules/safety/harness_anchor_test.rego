package rules.safety.harness_anchor_test

import data.lib.cases_test as trial
import data.rules.safety.harness_anchor

cases := {
	"with the cage": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"anchors_shared_with": ["Cage foot"]}}}]},
		"want": [{
			"subject": "car",
			"at": "safety.harness.anchors_shared_with",
			"figures": {"other": "Cage foot"},
		}],
	},
	"with the seat": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"anchors_shared_with": ["seat rail"]}}}]},
		"want": [{"subject": "car", "figures": {"other": "seat rail"}}],
	},
	"with another strap": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"anchors_shared_with": ["lap strap"]}}}]},
		"want": [],
	},
	"with nothing": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"none": ["anchors_shared_with"]}}}]},
		"want": [],
	},
	"not looked at": {
		"input": {"cars": [{"path": "car", "safety": {"harness": {"points": 6}}}]},
		"want": [{"subject": "car", "missing": ["safety.harness.anchors_shared_with"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(harness_anchor, "cars", each.want) with input as each.input
}
