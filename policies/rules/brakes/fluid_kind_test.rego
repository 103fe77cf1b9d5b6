package rules.brakes.fluid_kind_test

import data.lib.cases_test as trial
import data.rules.brakes.fluid_kind

cases := {
	"mineral oil on EPDM": {
		"input": {"brakes": [{"path": "brakes", "fluid": "mineral", "seals": "EPDM"}]},
		"want": [{
			"subject": "brakes",
			"at": "fluid",
			"figures": {"fluid": "mineral", "seals": "EPDM"},
		}],
	},
	"glycol fluid on EPDM": {
		"input": {"brakes": [{"path": "brakes", "fluid": "DOT 4", "seals": "EPDM"}]},
		"want": [],
	},
	"glycol fluid on nitrile": {
		"input": {"brakes": [{"path": "brakes", "fluid": "DOT 4", "seals": "nitrile"}]},
		"want": [{
			"subject": "brakes",
			"at": "fluid",
			"figures": {"fluid": "DOT 4", "seals": "nitrile"},
		}],
	},
	"mineral oil on nitrile": {
		"input": {"brakes": [{"path": "brakes", "fluid": "mineral", "seals": "nitrile"}]},
		"want": [],
	},
	"silicone on EPDM": {
		"input": {"brakes": [{"path": "brakes", "fluid": "DOT 5 silicone", "seals": "EPDM"}]},
		"want": [],
	},
	"not said": {
		"input": {"brakes": [{"path": "brakes", "carries": "brake fluid"}]},
		"want": [{"subject": "brakes", "missing": ["fluid", "seals"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(fluid_kind, "brakes", each.want) with input as each.input
}
