package rules.lifting.eye_pull_test

import data.lib.cases_test as trial
import data.rules.lifting.eye_pull

cases := {
	"at forty-five degrees": {
		"input": {
			"lift_points": [{
				"path": "driveline.lift.front",
				"thread": {"text": "M12x1.75"},
				"calc": {"eye_pull": 0.7853981633974483},
			}],
		},
		"want": [],
	},
	"past it": {
		"input": {
			"lift_points": [{
				"path": "driveline.lift.front",
				"thread": {"text": "M12x1.75"},
				"calc": {"eye_pull": 0.787},
			}],
		},
		"want": [{
			"subject": "driveline.lift.front",
			"at": "at",
			"figures": {"pull": 0.787, "most": 0.7853981633974483},
		}],
	},
	"a bracket": {
		"input": {
			"lift_points": [{
				"path": "driveline.lift.front",
				"calc": {"eye_pull": 1},
				"bolts": {"count": 2},
			}],
		},
		"want": [{"subject": "driveline.lift.front", "judged": true}],
	},
	"a bracket without a sling": {
		"input": {"lift_points": [{"path": "driveline.lift.front", "bolts": {"count": 2}}]},
		"want": [{"subject": "driveline.lift.front", "judged": true}],
	},
	"not said what it is": {
		"input": {
			"lift_points": [{"path": "driveline.lift.front", "calc": {"eye_pull": 0.7853981633974483}}],
		},
		"want": [{"subject": "driveline.lift.front", "missing": ["thread|bolts"]}],
	},
	"not known": {
		"input": {
			"lift_points": [{"path": "driveline.lift.front", "thread": {"text": "M12x1.75"}}],
		},
		"want": [{"subject": "driveline.lift.front", "missing": ["calc.eye_pull"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_pull, "lift_points", each.want) with input as each.input
}
