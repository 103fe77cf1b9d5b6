package rules.driveline.flange_holes_test

import data.lib.cases_test as trial
import data.rules.driveline.flange_holes

cases := {
	"alike within the limits": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.0865, "pilot": 0.0501},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [],
	},
	"another number": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 4, "circle": 0.0865, "pilot": 0.0501},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [{
			"subject": "shafts.prop.from",
			"case": "count",
			"at": "holes.count",
			"also": ["driveline.ports.prop"],
			"figures": {"here": 4, "there": 6},
		}],
	},
	"a wider circle": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.086502, "pilot": 0.0501},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [{
			"subject": "shafts.prop.from",
			"case": "circle",
			"at": "holes.circle",
			"also": ["driveline.ports.prop"],
			"figures": {"this": 0.086502, "that": 0.0862},
		}],
	},
	"a narrower circle": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.08, "pilot": 0.0501},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [{"subject": "shafts.prop.from", "case": "circle"}],
	},
	"as much narrower as is allowed": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.0859, "pilot": 0.0501},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [],
	},
	"as much smaller a pilot as is allowed": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.0865, "pilot": 0.0499},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [],
	},
	"a larger pilot": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.0865, "pilot": 0.0501005},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [{
			"subject": "shafts.prop.from",
			"case": "pilot",
			"at": "holes.pilot",
			"also": ["driveline.ports.prop"],
			"figures": {"this": 0.0501005, "that": 0.05},
		}],
	},
	"a smaller pilot": {
		"input": {
			"flanges": [{
				"path": "shafts.prop.from",
				"holes": {"count": 6, "circle": 0.0865, "pilot": 0.049},
				"port": {
					"path": "driveline.ports.prop",
					"holes": {"count": 6, "circle": 0.0862, "pilot": 0.05},
				},
			}],
		},
		"want": [{"subject": "shafts.prop.from", "case": "pilot"}],
	},
	"nothing said": {
		"input": {"flanges": [{"path": "shafts.prop.from"}]},
		"want": [{
			"subject": "shafts.prop.from",
			"missing": [
				"holes.count",
				"port.holes.count",
				"holes.circle",
				"port.holes.circle",
				"holes.pilot",
				"port.holes.pilot",
			],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(flange_holes, "flanges", each.want) with input as each.input
}
