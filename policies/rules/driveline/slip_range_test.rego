package rules.driveline.slip_range_test

import data.lib.cases_test as trial
import data.rules.driveline.slip_range

cases := {
	"just enough both ways": {"input": {"shafts": [{"path": "shafts.prop", "slip": [-0.01, 0.01]}]}, "want": []},
	"bottoms": {
		"input": {"shafts": [{"path": "shafts.prop", "slip": [-0.009, 0.01]}]},
		"want": [{
			"subject": "shafts.prop",
			"case": "inwards",
			"at": "slip",
			"figures": {"left": 0.009, "least": 0.01},
		}],
	},
	"just short inwards": {
		"input": {"shafts": [{"path": "shafts.prop", "slip": [-0.00995, 0.01]}]},
		"want": [{"subject": "shafts.prop", "case": "inwards"}],
	},
	"comes short": {
		"input": {"shafts": [{"path": "shafts.prop", "slip": [-0.01, 0.009]}]},
		"want": [{
			"subject": "shafts.prop",
			"case": "outwards",
			"at": "slip",
			"figures": {"left": 0.009, "least": 0.01},
		}],
	},
	"plenty": {"input": {"shafts": [{"path": "shafts.prop", "slip": [-0.03, 0.03]}]}, "want": []},
	"no sliding joint": {"input": {"shafts": [{"path": "shafts.prop", "none": ["slip"]}]}, "want": []},
	"not said": {
		"input": {"shafts": [{"path": "shafts.prop"}]},
		"want": [{"subject": "shafts.prop", "missing": ["slip"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(slip_range, "shafts", each.want) with input as each.input
}
