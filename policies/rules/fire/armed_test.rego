package rules.fire.armed_test

import data.lib.cases_test as trial
import data.rules.fire.armed

cases := {
	"pinned at the event": {
		"input": {"cars": [{"path": "car", "stage": "event", "safety": {"fire_system": {"state": "pinned"}}}]},
		"want": [{"subject": "car", "at": "safety.fire_system.state", "case": "pinned", "figures": {}}],
	},
	"armed at the event": {
		"input": {"cars": [{"path": "car", "stage": "event", "safety": {"fire_system": {"state": "armed"}}}]},
		"want": [],
	},
	"armed on stands": {
		"input": {"cars": [{"path": "car", "stage": "raised", "safety": {"fire_system": {"state": "armed"}}}]},
		"want": [{"subject": "car", "at": "safety.fire_system.state", "case": "live", "figures": {}}],
	},
	"pinned on stands": {
		"input": {"cars": [{"path": "car", "stage": "raised", "safety": {"fire_system": {"state": "pinned"}}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car", "safety": {"fire_system": {"agent": "foam"}}}]},
		"want": [{"subject": "car", "missing": ["stage", "safety.fire_system.state"]}],
	},
	"no system": {
		"input": {"cars": [{"path": "car", "stage": "event", "safety": {"none": ["fire_system"]}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(armed, "cars", each.want) with input as each.input
}
