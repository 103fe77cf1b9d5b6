package rules.lines.reach_test

import data.lib.cases_test as trial
import data.rules.lines.reach

cases := {
	"just enough with its ends": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"from": {"port": {"path": "fuel.filter.ports.out"}},
				"to": {"port": {"path": "driveline.ports.fuel-in"}},
				"calc": {"slack": 0, "slack_needed": 0.05},
			}],
		},
		"want": [],
	},
	"short": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"from": {"port": {"path": "fuel.filter.ports.out"}},
				"to": {"port": {"path": "driveline.ports.fuel-in"}},
				"calc": {"slack": -0.0002, "slack_needed": 0.05},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "hose.length",
			"figures": {"slack": -0.0002, "needed": 0.05},
		}],
	},
	"to the open air": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"from": {"port": {"path": "fuel.filter.ports.out"}},
				"to": {"none": ["port"]},
			}],
		},
		"want": [],
	},
	"from nothing said": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"from": {},
				"to": {"port": {"path": "driveline.ports.fuel-in"}},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["from.port"]}],
	},
	"nothing said": {
		"input": {"lines": [{"path": "lines.feed"}]},
		"want": [{"subject": "lines.feed", "missing": ["from.port", "to.port"]}],
	},
	"lengths not known": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"from": {"port": {"path": "fuel.filter.ports.out"}},
				"to": {"port": {"path": "driveline.ports.fuel-in"}},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["calc.slack", "calc.slack_needed"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(reach, "lines", each.want) with input as each.input
}
