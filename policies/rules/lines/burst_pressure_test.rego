package rules.lines.burst_pressure_test

import data.lib.cases_test as trial
import data.rules.lines.burst_pressure

cases := {
	"fuel hose": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "kind": {"burst": 6950000}}]},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.burst",
			"case": "fuel",
			"figures": {"burst": 6950000, "least": 7000000},
		}],
	},
	"fuel hose at the figure": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "kind": {"burst": 7000000}}]},
		"want": [],
	},
	"oil hose": {
		"input": {
			"lines": [{"path": "lines.feed", "service": "engine oil", "kind": {"burst": 6950000}}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.burst",
			"case": "oil",
			"figures": {"burst": 6950000, "least": 7000000},
		}],
	},
	"oil hose at the figure": {
		"input": {
			"lines": [{"path": "lines.feed", "service": "engine oil", "kind": {"burst": 7000000}}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.burst"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"burst": 6950000}}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"coolant": {
		"input": {
			"lines": [{"path": "lines.feed", "service": "coolant", "kind": {"burst": 6950000}}],
		},
		"want": [],
	},
	"steel pipe": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "metal", "burst": 6950000},
			}],
		},
		"want": [],
	},
	"steel oil pipe": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"kind": {"liner": "metal", "burst": 6950000},
			}],
		},
		"want": [],
	},
	"steel pipe that says no more": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "kind": {"liner": "metal"}}]},
		"want": [],
	},
	"steel pipe that says nothing else": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"liner": "metal"}}]},
		"want": [],
	},
	"coolant that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "coolant"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(burst_pressure, "lines", each.want) with input as each.input
}
