package rules.brakes.assist_source_test

import data.lib.cases_test as trial
import data.rules.brakes.assist_source

cases := {
	"no vacuum": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"servo": {"source": "manifold", "check_valve": true},
				"needs": {"gives_vacuum": false},
			}],
		},
		"want": [{"subject": "brakes", "at": "servo.source", "case": "vacuum"}],
	},
	"vacuum": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"servo": {"source": "manifold", "check_valve": true},
				"needs": {"gives_vacuum": true},
			}],
		},
		"want": [],
	},
	"no check valve": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"servo": {"source": "manifold", "check_valve": false},
				"needs": {"gives_vacuum": true},
			}],
		},
		"want": [{"subject": "brakes", "at": "servo.check_valve", "case": "valve"}],
	},
	"not said": {
		"input": {"brakes": [{"path": "brakes", "servo": {"source": "manifold"}}]},
		"want": [{"subject": "brakes", "missing": ["servo.check_valve", "needs.gives_vacuum"]}],
	},
	"source not said": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"servo": {"check_valve": false},
				"needs": {"gives_vacuum": false},
			}],
		},
		"want": [{"subject": "brakes", "missing": ["servo.source"]}],
	},
	"a pump": {
		"input": {
			"brakes": [{
				"path": "brakes",
				"servo": {"source": "pump", "check_valve": false},
				"needs": {"gives_vacuum": false},
			}],
		},
		"want": [],
	},
	"a pump, nothing more": {
		"input": {"brakes": [{"path": "brakes", "servo": {"source": "pump"}}]},
		"want": [{"subject": "brakes", "judged": false}],
	},
	"no servo": {
		"input": {
			"brakes": [{"path": "brakes", "none": ["servo"], "needs": {"gives_vacuum": false}}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(assist_source, "brakes", each.want) with input as each.input
}
