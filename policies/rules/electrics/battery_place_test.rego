package rules.electrics.battery_place_test

import data.lib.cases_test as trial
import data.rules.electrics.battery_place

cases := {
	"open, in the cockpit": {
		"input": {
			"electrics": [{"path": "electrics", "battery": {"place": "cockpit", "sealed": false}}],
		},
		"want": [{"subject": "electrics", "at": "battery.sealed"}],
	},
	"sealed, in the cockpit": {
		"input": {
			"electrics": [{"path": "electrics", "battery": {"place": "cockpit", "sealed": true}}],
		},
		"want": [],
	},
	"open, in the boot": {
		"input": {
			"electrics": [{"path": "electrics", "battery": {"place": "boot", "sealed": false}}],
		},
		"want": [{"subject": "electrics", "judged": false}],
	},
	"not said whether it is sealed": {
		"input": {"electrics": [{"path": "electrics", "battery": {"place": "cockpit"}}]},
		"want": [{"subject": "electrics", "missing": ["battery.sealed"]}],
	},
	"open, not said where": {
		"input": {"electrics": [{"path": "electrics", "battery": {"sealed": false}}]},
		"want": [{"subject": "electrics", "missing": ["battery.place"]}],
	},
	"nothing said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{"subject": "electrics", "missing": ["battery.place", "battery.sealed"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(battery_place, "electrics", each.want) with input as each.input
}
