package rules.safety.isolator_handle_test

import data.lib.cases_test as trial
import data.rules.safety.isolator_handle

cases := {
	"in the cockpit of a closed car": {
		"input": {"electrics": [{"path": "electrics", "car": {"closed": true}, "isolator": {"handles": ["cockpit"]}}]},
		"want": [{"subject": "electrics", "at": "isolator.handles", "figures": {}}],
	},
	"inside and outside": {
		"input": {"electrics": [{"path": "electrics", "car": {"closed": true}, "isolator": {"handles": ["cockpit", "scuttle left"]}}]},
		"want": [],
	},
	"in an open car": {
		"input": {"electrics": [
			{"path": "electrics", "car": {"closed": false}, "isolator": {"handles": ["cockpit"]}},
			{"path": "bare", "car": {"closed": false}},
		]},
		"want": [],
	},
	"nothing said": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"marked": "blue triangle"}}]},
		"want": [{"subject": "electrics", "missing": ["car.closed", "isolator.handles"]}],
	},
	"no handle said of a closed car": {
		"input": {"electrics": [{"path": "electrics", "car": {"closed": true}}]},
		"want": [{"subject": "electrics", "missing": ["isolator.handles"]}],
	},
	"nothing said of a roof": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"handles": ["cockpit"]}}]},
		"want": [{"subject": "electrics", "missing": ["car.closed"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(isolator_handle, "electrics", each.want) with input as each.input
}
