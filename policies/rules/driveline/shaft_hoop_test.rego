package rules.driveline.shaft_hoop_test

import data.lib.cases_test as trial
import data.rules.driveline.shaft_hoop

cases := {
	"none, then one": {
		"input": {"shafts": [{"path": "shafts.prop", "hoops": 1, "none": ["hoops"]}]},
		"want": [{"subject": "shafts.prop", "at": "hoops"}],
	},
	"one": {"input": {"shafts": [{"path": "shafts.prop", "hoops": 1}]}, "want": []},
	"none": {
		"input": {"shafts": [{"path": "shafts.prop", "none": ["hoops"]}]},
		"want": [{"subject": "shafts.prop", "at": "hoops"}],
	},
	"none of something else": {
		"input": {"shafts": [{"path": "shafts.prop", "hoops": 1, "none": ["slip"]}]},
		"want": [],
	},
	"not said, and none of something else": {
		"input": {"shafts": [{"path": "shafts.prop", "none": ["slip"]}]},
		"want": [{"subject": "shafts.prop", "missing": ["hoops"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(shaft_hoop, "shafts", each.want) with input as each.input
}
