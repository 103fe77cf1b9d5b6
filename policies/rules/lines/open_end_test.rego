package rules.lines.open_end_test

import data.lib.cases_test as trial
import data.rules.lines.open_end

cases := {
	"oil on the ground": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"port": {"name": "oil.cooler.out"}},
				"to": {"port": {"name": "x"}},
				"ends": "under the sill",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "ends",
			"figures": {"where": "under the sill", "service": "engine oil"},
		}],
	},
	"a drain": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"port": {"name": "oil.cooler.out", "purpose": "drain"}},
				"to": {"port": {"name": "x"}},
				"ends": "under the sill",
			}],
		},
		"want": [],
	},
	"a drain the other way": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"port": {"name": "oil.cooler.out"}},
				"to": {"port": {"name": "x", "purpose": "drain"}},
				"ends": "under the sill",
			}],
		},
		"want": [],
	},
	"both ends joined": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"port": {"name": "oil.cooler.out"}},
				"to": {"port": {"name": "x"}},
			}],
		},
		"want": [],
	},
	"runs out, nobody says where": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"port": {"name": "oil.cooler.out"}},
				"to": {"none": ["half", "port"]},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["ends"]}],
	},
	"comes in, nobody says from where": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"none": ["half", "port"]},
				"to": {"port": {"name": "oil.tank.in"}},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["ends"]}],
	},
	"one end not said": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"from": {"port": {"name": "oil.cooler.out"}},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["to|ends"]}],
	},
	"no end said": {
		"input": {"lines": [{"path": "lines.feed", "service": "engine oil"}]},
		"want": [{"subject": "lines.feed", "missing": ["from|ends", "to|ends"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "ends": "under the sill"}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"a vent": {
		"input": {
			"lines": [{"path": "lines.feed", "service": "fuel vapour", "ends": "under the sill"}],
		},
		"want": [],
	},
	"a vent that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "fuel vapour", "from": {"none": ["port"]}, "to": {"none": ["port"]}}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(open_end, "lines", each.want) with input as each.input
}
