package rules.tune.sensors_present_test

import data.lib.cases_test as trial
import data.rules.tune.sensors_present

cases := {
	"not there": {
		"input": {"expected_sensors": [{"path": "driveline.tune.expects#car.pedal-1", "name": "pedal-1", "on": "car", "present": false}]},
		"want": [{"subject": "driveline.tune.expects#car.pedal-1", "figures": {"sensor": "pedal-1", "on": "car"}}],
	},
	"there": {
		"input": {"expected_sensors": [{"path": "driveline.tune.expects#car.pedal-1", "name": "pedal-1", "on": "car", "present": true}]},
		"want": [],
	},
	"nothing said of sensors": {
		"input": {"expected_sensors": [{"path": "driveline.tune.expects#car.pedal-1", "name": "pedal-1", "on": "car"}]},
		"want": [{"subject": "driveline.tune.expects#car.pedal-1", "missing": ["present"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(sensors_present, "expected_sensors", each.want) with input as each.input
}
