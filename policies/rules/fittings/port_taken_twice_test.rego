package rules.fittings.port_taken_twice_test

import data.lib.cases_test as trial
import data.rules.fittings.port_taken_twice

cases := {
	"two lines": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"half": {"form": "37-flare"},
				"joined_by": ["lines.feed.from", "lines.scavenge.to"],
				"settled": true,
			}],
		},
		"want": [{
			"subject": "oil.tank.ports.out",
			"also": ["lines.feed.from", "lines.scavenge.to"],
			"figures": {"lines": 2},
		}],
	},
	"one line": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"half": {"form": "37-flare"},
				"joined_by": ["lines.feed.from"],
				"settled": true,
			}],
		},
		"want": [],
	},
	"form not said": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"joined_by": ["lines.feed.from", "lines.scavenge.to"],
				"settled": true,
			}],
		},
		"want": [{"subject": "oil.tank.ports.out", "missing": ["half.form"]}],
	},
	"one line, and another that ends nowhere known": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"half": {"form": "37-flare"},
				"joined_by": ["lines.feed.from"],
			}],
		},
		"want": [{"subject": "oil.tank.ports.out", "missing": ["settled"]}],
	},
	"one line, form not said": {
		"input": {"ports": [{"path": "oil.tank.ports.out", "joined_by": ["lines.feed.from"], "settled": true}]},
		"want": [],
	},
	"nothing said": {
		"input": {"ports": [{"path": "oil.tank.ports.out", "owner": "car", "settled": true}]},
		"want": [],
	},
	"a stud takes several": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"half": {"form": "stud"},
				"joined_by": ["circuits.starter.from", "circuits.feed.from"],
				"settled": true,
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(port_taken_twice, "ports", each.want) with input as each.input
}
