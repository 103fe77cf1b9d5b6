package rules.driveline.joint_angle_test

import data.lib.cases_test as trial
import data.rules.driveline.joint_angle

cases := {
	"at the limit": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "cross",
				"calc": {"joint_angle": 0.04, "joint_angle_most": 0.04},
			}],
		},
		"want": [],
	},
	"past it": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "cross",
				"calc": {"joint_angle": 0.05, "joint_angle_most": 0.04},
			}],
		},
		"want": [{
			"subject": "shafts.prop",
			"at": "angle_front",
			"figures": {"angle": 0.05, "most": 0.04},
		}],
	},
	"constant velocity": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "constant-velocity",
				"calc": {"joint_angle": 0.05, "joint_angle_most": 0.04},
			}],
		},
		"want": [{"subject": "shafts.prop", "judged": false}],
	},
	"joints not said": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"calc": {"joint_angle": 0.04, "joint_angle_most": 0.04},
			}],
		},
		"want": [{"subject": "shafts.prop", "missing": ["joints"]}],
	},
	"nothing known": {
		"input": {"shafts": [{"path": "shafts.prop", "joints": "cross"}]},
		"want": [{
			"subject": "shafts.prop",
			"missing": ["calc.joint_angle", "calc.joint_angle_most"],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(joint_angle, "shafts", each.want) with input as each.input
}
