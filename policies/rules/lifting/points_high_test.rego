package rules.lifting.points_high_test

import data.lib.cases_test as trial
import data.rules.lifting.points_high

cases := {
	"below": {
		"input": {"lift_points": [{"path": "driveline.lift.rear", "calc": {"above_mass": -0.05}}]},
		"want": [{"subject": "driveline.lift.rear", "at": "at", "figures": {"below": 0.05}}],
	},
	"level with it": {
		"input": {"lift_points": [{"path": "driveline.lift.rear", "calc": {"above_mass": 0}}]},
		"want": [],
	},
	"not known": {
		"input": {"lift_points": [{"path": "driveline.lift.rear"}]},
		"want": [{"subject": "driveline.lift.rear", "missing": ["calc.above_mass"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(points_high, "lift_points", each.want) with input as each.input
}
