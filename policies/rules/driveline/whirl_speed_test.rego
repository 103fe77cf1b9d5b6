package rules.driveline.whirl_speed_test

import data.lib.cases_test as trial
import data.rules.driveline.whirl_speed

cases := {
	"at it": {
		"input": {"shafts": [{"path": "shafts.prop", "calc": {"top_speed": 800, "whirling": 800}}]},
		"want": [{"subject": "shafts.prop", "at": "tube", "figures": {"top": 800, "whirling": 800}}],
	},
	"just below": {
		"input": {"shafts": [{"path": "shafts.prop", "calc": {"top_speed": 799, "whirling": 800}}]},
		"want": [],
	},
	"not known": {
		"input": {"shafts": [{"path": "shafts.prop"}]},
		"want": [{"subject": "shafts.prop", "missing": ["calc.top_speed", "calc.whirling"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(whirl_speed, "shafts", each.want) with input as each.input
}
