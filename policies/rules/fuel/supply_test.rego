package rules.fuel.supply_test

import data.lib.cases_test as trial
import data.rules.fuel.supply

cases := {
	"short": {
		"input": {"fuel": [{"path": "fuel", "calc": {"pump_flow": 7e-05, "demand": 8e-05}}]},
		"want": [{"subject": "fuel", "at": "pump.flow", "figures": {"flow": 7e-05, "demand": 8e-05}}],
	},
	"just enough": {
		"input": {"fuel": [{"path": "fuel", "calc": {"pump_flow": 8e-05, "demand": 8e-05}}]},
		"want": [],
	},
	"not known": {
		"input": {"fuel": [{"path": "fuel", "pump": {"draws": 9}}]},
		"want": [{"subject": "fuel", "missing": ["calc.pump_flow", "calc.demand"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(supply, "fuel", each.want) with input as each.input
}
