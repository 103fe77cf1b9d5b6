package rules.safety.isolator_test

import data.lib.cases_test as trial
import data.rules.safety.isolator

cases := {
	"it stops the engine and cuts all": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"stops_engine": true}, "unkilled": []}]},
		"want": [],
	},
	"the engine runs on": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"stops_engine": false}, "unkilled": []}]},
		"want": [{"subject": "electrics", "at": "isolator.stops_engine", "case": "runs_on", "figures": {}}],
	},
	"two feeds stay live": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"stops_engine": true}, "unkilled": ["fan", "fuel-pump"]}]},
		"want": [{"subject": "electrics", "at": "isolator.kills", "case": "uncut", "figures": {"circuits": "fan, fuel-pump"}}],
	},
	"one feed stays live": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"stops_engine": true}, "unkilled": ["fan"]}]},
		"want": [{"subject": "electrics", "at": "isolator.kills", "case": "uncut", "figures": {"circuits": "fan"}}],
	},
	"there is none": {
		"input": {"electrics": [{"path": "electrics", "none": ["isolator"], "unkilled": []}]},
		"want": [{"subject": "electrics", "at": "isolator", "case": "absent", "figures": {}}],
	},
	"a battery without one": {
		"input": {"electrics": [{"path": "electrics", "none": ["battery"], "unkilled": []}]},
		"want": [{"subject": "electrics", "missing": ["isolator.stops_engine"]}],
	},
	"no battery, and it stops the engine": {
		"input": {"electrics": [{"path": "electrics", "none": ["battery"], "unkilled": [], "isolator": {"stops_engine": true}}]},
		"want": [],
	},
	"a switch beside none": {
		"input": {"electrics": [{"path": "electrics", "none": ["isolator"], "unkilled": [], "isolator": {"stops_engine": true}}]},
		"want": [{"subject": "electrics", "at": "isolator", "case": "absent", "figures": {}}],
	},
	"not tried, and no circuits said": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"marked": "blue triangle"}}]},
		"want": [{"subject": "electrics", "missing": ["isolator.stops_engine", "unkilled"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(isolator, "electrics", each.want) with input as each.input
}
