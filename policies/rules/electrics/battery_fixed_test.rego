package rules.electrics.battery_fixed_test

import data.lib.cases_test as trial
import data.rules.electrics.battery_fixed

cases := {
	"loose": {
		"input": {"electrics": [{"path": "electrics", "battery": {"none": ["held"]}}]},
		"want": [{"subject": "electrics", "at": "battery.held", "figures": {}}],
	},
	"bolted, without a cover": {
		"input": {"electrics": [{"path": "electrics", "battery": {"held": {"count": 2}, "none": ["cover"]}}]},
		"want": [],
	},
	"loose, without a cover": {
		"input": {"electrics": [{"path": "electrics", "battery": {"held": {"count": 2}, "none": ["held"]}}]},
		"want": [{"subject": "electrics"}],
	},
	"not said": {
		"input": {"electrics": [{"path": "electrics", "battery": {"capacity": 108000}}]},
		"want": [{"subject": "electrics", "missing": ["battery.held"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(battery_fixed, "electrics", each.want) with input as each.input
}
