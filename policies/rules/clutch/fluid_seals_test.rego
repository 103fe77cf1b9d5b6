package rules.clutch.fluid_seals_test

import data.lib.cases_test as trial
import data.rules.clutch.fluid_seals

cases := {
	"EPDM in mineral oil, master": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "mineral",
				"master": {"seals": "EPDM"},
				"slave": {"seals": "nitrile"},
			}],
		},
		"want": [{
			"subject": "clutch",
			"at": "master.seals",
			"case": "master",
			"figures": {"fluid": "mineral", "seals": "EPDM"},
		}],
	},
	"EPDM in mineral oil, slave": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "mineral",
				"master": {"seals": "nitrile"},
				"slave": {"seals": "EPDM"},
			}],
		},
		"want": [{
			"subject": "clutch",
			"at": "slave.seals",
			"case": "slave",
			"figures": {"fluid": "mineral", "seals": "EPDM"},
		}],
	},
	"both suit": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "mineral",
				"master": {"seals": "nitrile"},
				"slave": {"seals": "nitrile"},
			}],
		},
		"want": [],
	},
	"both in glycol fluid": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "DOT 4",
				"master": {"seals": "nitrile"},
				"slave": {"seals": "nitrile"},
			}],
		},
		"want": [{"subject": "clutch", "case": "master"}, {"subject": "clutch", "case": "slave"}],
	},
	"EPDM in glycol fluid": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "DOT 4",
				"master": {"seals": "EPDM"},
				"slave": {"seals": "EPDM"},
			}],
		},
		"want": [],
	},
	"from memory is not enough": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "mineral",
				"master": {"seals": "natural-rubber"},
				"slave": {"seals": "nitrile"},
			}],
		},
		"want": [],
	},
	"not said": {
		"input": {"clutch": [{"path": "clutch", "master": {"bore": 0.0159}}]},
		"want": [{"subject": "clutch", "missing": ["fluid", "master.seals", "slave.seals"]}],
	},
	"nitrile in DOT 3": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "DOT 3",
				"master": {"seals": "EPDM"},
				"slave": {"seals": "nitrile"},
			}],
		},
		"want": [{"subject": "clutch", "case": "slave"}],
	},
	"nitrile in DOT 5.1": {
		"input": {
			"clutch": [{
				"path": "clutch",
				"fluid": "DOT 5.1",
				"master": {"seals": "EPDM"},
				"slave": {"seals": "nitrile"},
			}],
		},
		"want": [{"subject": "clutch", "case": "slave"}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(fluid_seals, "clutch", each.want) with input as each.input
}
