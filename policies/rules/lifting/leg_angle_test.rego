package rules.lifting.leg_angle_test

import data.lib.cases_test as trial
import data.rules.lifting.leg_angle

cases := {
	"thirty degrees": {
		"input": {
			"lift_points": [{"path": "driveline.lift.front", "calc": {"leg_angle": 0.5235987755982989}}],
		},
		"want": [],
	},
	"flatter": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "calc": {"leg_angle": 0.522}}]},
		"want": [{
			"subject": "driveline.lift.front",
			"at": "at",
			"figures": {"angle": 0.522, "least": 0.5235987755982989},
		}],
	},
	"not known": {
		"input": {"lift_points": [{"path": "driveline.lift.front"}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["calc.leg_angle"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(leg_angle, "lift_points", each.want) with input as each.input
}
