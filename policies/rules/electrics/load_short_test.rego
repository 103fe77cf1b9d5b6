package rules.electrics.load_short_test

import data.lib.cases_test as trial
import data.rules.electrics.load_short

cases := {
	"alike": {
		"input": {
			"circuits": [{
				"path": "circuits.fuel-pump",
				"to": {"port": "fuel.pump"},
				"feeds": "fuel pump",
				"load": 13,
				"calc": {"draws": 13},
			}],
		},
		"want": [],
	},
	"less": {
		"input": {
			"circuits": [{
				"path": "circuits.fuel-pump",
				"to": {"port": "fuel.pump"},
				"feeds": "fuel pump",
				"load": 12,
				"calc": {"draws": 13},
			}],
		},
		"want": [{
			"subject": "circuits.fuel-pump",
			"at": "load",
			"figures": {"load": 12, "feeds": "fuel pump", "draws": 13},
		}],
	},
	"lamps": {
		"input": {"circuits": [{"path": "circuits.lamps", "to": {"port": "parts.lamps"}}]},
		"want": [{"subject": "circuits.lamps", "judged": true}],
	},
	"leads nowhere known": {
		"input": {"circuits": [{"path": "circuits.fuel-pump", "load": 12}]},
		"want": [{"subject": "circuits.fuel-pump", "missing": ["to.port"]}],
	},
	"nothing said": {
		"input": {"circuits": [{"path": "circuits.fuel-pump", "to": {"port": "fuel.pump"}, "feeds": "fuel pump"}]},
		"want": [{"subject": "circuits.fuel-pump", "missing": ["load", "calc.draws"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(load_short, "circuits", each.want) with input as each.input
}
