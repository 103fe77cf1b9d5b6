package rules.tune.manifold_range_test

import data.lib.cases_test as trial
import data.rules.tune.manifold_range

cases := {
	"three bar for four": {
		"input": {"expected_sensors": [{
			"path": "driveline.tune.expects#manifold",
			"name": "manifold",
			"tune": {"manifold": [0, 400000]},
			"sensor": {"range_absolute": [10000, 300000]},
		}]},
		"want": [{
			"subject": "driveline.tune.expects#manifold",
			"figures": {"sensor": "manifold", "map_low": 0, "map_high": 400000, "low": 10000, "high": 300000},
		}],
	},
	"another end for four": {
		"input": {"expected_sensors": [{
			"path": "driveline.tune.expects#manifold",
			"name": "manifold",
			"tune": {"manifold": [0, 400000]},
			"sensor": {"range_absolute": [0, 300000]},
		}]},
		"want": [{"subject": "driveline.tune.expects#manifold"}],
	},
	"four bar": {
		"input": {"expected_sensors": [{
			"path": "driveline.tune.expects#manifold",
			"name": "manifold",
			"tune": {"manifold": [0, 400000]},
			"sensor": {"range_absolute": [0, 400000]},
		}]},
		"want": [],
	},
	"other sensors": {
		"input": {"expected_sensors": [
			{
				"path": "driveline.tune.expects#weather",
				"name": "weather",
				"tune": {"manifold": [0, 400000]},
				"sensor": {"range_absolute": [60000, 120000]},
			},
			{"path": "driveline.tune.expects#crank", "name": "crank"},
		]},
		"want": [],
	},
	"nothing said": {
		"input": {"expected_sensors": [{"path": "driveline.tune.expects#map", "name": "map"}]},
		"want": [{"subject": "driveline.tune.expects#map", "missing": ["tune.manifold", "sensor.range_absolute"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(manifold_range, "expected_sensors", each.want) with input as each.input
}
