package rules.tune.pedal_kind_test

import data.lib.cases_test as trial
import data.rules.tune.pedal_kind

cases := {
	"a cable to a motor": {
		"input": {"electrics": [{"path": "electrics", "car": {"throttle": "cable"}, "engine": {"path": "driveline.engine", "throttle": "electronic"}}]},
		"want": [{
			"subject": "electrics",
			"at": "car.throttle",
			"also": ["driveline.engine"],
			"figures": {"pedal": "cable", "engine": "electronic"},
		}],
	},
	"sensors to a motor": {
		"input": {"electrics": [{"path": "electrics", "car": {"throttle": "electronic"}, "engine": {"path": "driveline.engine", "throttle": "electronic"}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{"subject": "electrics", "missing": ["car.throttle", "engine.throttle"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pedal_kind, "electrics", each.want) with input as each.input
}
