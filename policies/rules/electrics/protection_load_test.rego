package rules.electrics.protection_load_test

import data.lib.cases_test as trial
import data.rules.electrics.protection_load

cases := {
	"four fifths": {
		"input": {"circuits": [{"path": "circuits.fan", "load": 8, "calc": {"protection": 10}}]},
		"want": [],
	},
	"a little more": {
		"input": {
			"circuits": [{"path": "circuits.fan", "load": 8.05, "calc": {"protection": 10}}],
		},
		"want": [{
			"subject": "circuits.fan",
			"case": "tight",
			"at": "fuse",
			"figures": {"load": 8.05, "fuse": 10},
		}],
	},
	"all of it": {
		"input": {"circuits": [{"path": "circuits.fan", "load": 10, "calc": {"protection": 10}}]},
		"want": [{"subject": "circuits.fan", "case": "tight"}],
	},
	"more than it bears": {
		"input": {
			"circuits": [{"path": "circuits.fan", "load": 10.1, "calc": {"protection": 10}}],
		},
		"want": [{
			"subject": "circuits.fan",
			"case": "under",
			"at": "fuse",
			"figures": {"load": 10.1, "fuse": 10},
		}],
	},
	"no fuse": {
		"input": {"circuits": [{"path": "circuits.fan", "load": 8, "none": ["fuse"]}]},
		"want": [],
	},
	"nothing said": {
		"input": {"circuits": [{"path": "circuits.fan"}]},
		"want": [{"subject": "circuits.fan", "missing": ["load", "calc.protection|fuse"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(protection_load, "circuits", each.want) with input as each.input
}
