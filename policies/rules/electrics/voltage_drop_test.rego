package rules.electrics.voltage_drop_test

import data.lib.cases_test as trial
import data.rules.electrics.voltage_drop

cases := {
	"a thin starter cable": {
		"input": {"circuits": [{"path": "circuits.starter", "purpose": "starter", "calc": {"drop": 0.501}}]},
		"want": [{"subject": "circuits.starter", "at": "wire", "figures": {"drop": 0.501, "most": 0.5}}],
	},
	"a sound starter cable": {
		"input": {"circuits": [{"path": "circuits.starter", "purpose": "starter", "calc": {"drop": 0.5}}]},
		"want": [],
	},
	"a thin charging cable": {
		"input": {"circuits": [{"path": "circuits.charge", "purpose": "charging", "calc": {"drop": 0.401}}]},
		"want": [{"subject": "circuits.charge", "at": "wire", "figures": {"drop": 0.401, "most": 0.4}}],
	},
	"a sound charging cable": {
		"input": {"circuits": [{"path": "circuits.charge", "purpose": "charging", "calc": {"drop": 0.4}}]},
		"want": [],
	},
	"a thin pump wire": {
		"input": {"circuits": [{"path": "circuits.pump", "purpose": "fuel pump", "calc": {"drop": 0.501}}]},
		"want": [{"subject": "circuits.pump", "at": "wire", "figures": {"drop": 0.501, "most": 0.5}}],
	},
	"a sound pump wire": {
		"input": {"circuits": [{"path": "circuits.pump", "purpose": "fuel pump", "calc": {"drop": 0.5}}]},
		"want": [],
	},
	"purposes without a figure": {
		"input": {"circuits": [
			{"path": "circuits.strap", "purpose": "earth", "calc": {"drop": 9}},
			{"path": "circuits.bus", "purpose": "data"},
			{"path": "circuits.tail", "purpose": "lights"},
			{"path": "circuits.horn", "purpose": "other"},
			{"path": "circuits.chassis", "purpose": "earth"},
		]},
		"want": [],
	},
	"nothing said": {
		"input": {"circuits": [{"path": "circuits.fan"}]},
		"want": [{"subject": "circuits.fan", "missing": ["purpose", "calc.drop"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(voltage_drop, "circuits", each.want) with input as each.input
}
