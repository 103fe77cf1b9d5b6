package rules.lifting.eye_depth_test

import data.lib.cases_test as trial
import data.rules.lifting.eye_depth

m10 := {"text": "M10x1.5"}

cases := {
	"shallow": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "thread": m10, "into": "aluminium", "calc": {"depth_diameters": 1.5, "depth_needed": 2}}]},
		"want": [{
			"subject": "driveline.lift.front",
			"at": "depth",
			"figures": {"depth": 1.5, "needed": 2, "metal": "aluminium"},
		}],
	},
	"deep enough": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "thread": m10, "into": "aluminium", "calc": {"depth_diameters": 2, "depth_needed": 2}}]},
		"want": [],
	},
	"a bracket": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "bolts": {"count": 2}}]},
		"want": [],
	},
	"an eye, and nothing more": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "thread": m10}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["into", "calc.depth_diameters", "calc.depth_needed"]}],
	},
	"nothing said": {
		"input": {"lift_points": [{"path": "driveline.lift.front"}]},
		"want": [{"subject": "driveline.lift.front", "missing": ["thread|bolts"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_depth, "lift_points", each.want) with input as each.input
}
