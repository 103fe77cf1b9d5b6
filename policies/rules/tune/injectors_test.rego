package rules.tune.injectors_test

import data.lib.cases_test as trial
import data.rules.tune.injectors

mapped := {"count": 5, "flow": 100, "pressure": 300000}

cases := {
	"those of the map": {
		"input": {"tunes": [{"path": "driveline.tune", "injectors": mapped, "engine": {"path": "driveline.engine", "injectors": {"count": 5, "flow": 103, "pressure": 300000}}}]},
		"want": [],
	},
	"one more": {
		"input": {"tunes": [{"path": "driveline.tune", "injectors": mapped, "engine": {"path": "driveline.engine", "injectors": {"count": 6, "flow": 103, "pressure": 300000}}}]},
		"want": [{
			"subject": "driveline.tune",
			"at": "injectors.count",
			"also": ["driveline.engine"],
			"case": "count",
			"figures": {"mapped": 5, "fitted": 6},
		}],
	},
	"larger": {
		"input": {"tunes": [{"path": "driveline.tune", "injectors": mapped, "engine": {"path": "driveline.engine", "injectors": {"count": 5, "flow": 103.02, "pressure": 300000}}}]},
		"want": [{
			"subject": "driveline.tune",
			"at": "injectors.flow",
			"also": ["driveline.engine"],
			"case": "flow",
			"figures": {"mapped_flow": 100, "fitted_flow": 103.02},
		}],
	},
	"smaller": {
		"input": {"tunes": [{"path": "driveline.tune", "injectors": mapped, "engine": {"path": "driveline.engine", "injectors": {"count": 5, "flow": 96.98, "pressure": 300000}}}]},
		"want": [{"subject": "driveline.tune", "case": "flow"}],
	},
	"measured at another pressure": {
		"input": {"tunes": [{"path": "driveline.tune", "injectors": mapped, "engine": {"path": "driveline.engine", "injectors": {"count": 5, "flow": 103, "pressure": 400000}}}]},
		"want": [{
			"subject": "driveline.tune",
			"at": "injectors.pressure",
			"also": ["driveline.engine"],
			"case": "bench",
			"figures": {"mapped_at": 300000, "fitted_at": 400000},
		}],
	},
	"larger, but measured at another pressure": {
		"input": {"tunes": [{"path": "driveline.tune", "injectors": mapped, "engine": {"path": "driveline.engine", "injectors": {"count": 5, "flow": 120, "pressure": 400000}}}]},
		"want": [{"subject": "driveline.tune", "case": "bench"}],
	},
	"nothing said": {
		"input": {"tunes": [{"path": "driveline.tune"}]},
		"want": [{
			"subject": "driveline.tune",
			"missing": [
				"injectors.count", "engine.injectors.count",
				"injectors.flow", "engine.injectors.flow",
				"injectors.pressure", "engine.injectors.pressure",
			],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(injectors, "tunes", each.want) with input as each.input
}
