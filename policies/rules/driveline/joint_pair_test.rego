package rules.driveline.joint_pair_test

import data.lib.cases_test as trial
import data.rules.driveline.joint_pair

cases := {
	"one degree apart": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "cross",
				"phased": true,
				"calc": {"angle_difference": 0.017453292519943295},
			}],
		},
		"want": [],
	},
	"further apart": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "cross",
				"phased": true,
				"calc": {"angle_difference": 0.0175},
			}],
		},
		"want": [{
			"subject": "shafts.prop",
			"case": "angles",
			"at": "angle_rear",
			"figures": {"apart": 0.0175, "most": 0.017453292519943295},
		}],
	},
	"yokes across": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "cross",
				"phased": false,
				"calc": {"angle_difference": 0.017453292519943295},
			}],
		},
		"want": [{"subject": "shafts.prop", "case": "phase", "at": "phased"}],
	},
	"constant velocity": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"joints": "constant-velocity",
				"phased": false,
				"calc": {"angle_difference": 0.5},
			}],
		},
		"want": [{"subject": "shafts.prop", "judged": false}],
	},
	"joints not said": {
		"input": {
			"shafts": [{
				"path": "shafts.prop",
				"phased": true,
				"calc": {"angle_difference": 0.017453292519943295},
			}],
		},
		"want": [{"subject": "shafts.prop", "missing": ["joints"]}],
	},
	"nothing known": {
		"input": {"shafts": [{"path": "shafts.prop", "joints": "cross"}]},
		"want": [{"subject": "shafts.prop", "missing": ["phased", "calc.angle_difference"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(joint_pair, "shafts", each.want) with input as each.input
}
