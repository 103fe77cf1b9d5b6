package rules.fasteners.wrench_range_test

import data.lib.cases_test as trial
import data.rules.fasteners.wrench_range

cases := {
	"none reaches it": {
		"input": {"fastenings": [{"path": "fasteners.hub.bolts", "torque": 400, "wrench": false}]},
		"want": [{"subject": "fasteners.hub.bolts", "at": "torque", "figures": {"torque": 400}}],
	},
	"one reaches it": {
		"input": {"fastenings": [{"path": "fasteners.hub.bolts", "torque": 400, "wrench": true}]},
		"want": [],
	},
	"not known": {
		"input": {"fastenings": [{"path": "fasteners.hub.bolts", "torque": 400}]},
		"want": [{"subject": "fasteners.hub.bolts", "judged": true}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(wrench_range, "fastenings", each.want) with input as each.input
}
