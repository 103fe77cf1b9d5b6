package rules.fuel.feed_loss_test

import data.lib.cases_test as trial
import data.rules.fuel.feed_loss

cases := {
	"short behind its lines": {
		"input": {"fuel": [{"path": "fuel", "calc": {"pump_flow": 8e-05, "fed_flow": 7e-05, "demand": 8e-05, "feed_loss": 9000}}]},
		"want": [{
			"subject": "fuel",
			"at": "pump.flow",
			"figures": {"loss": 9000, "flow": 7e-05, "demand": 8e-05},
		}],
	},
	"just enough": {
		"input": {"fuel": [{"path": "fuel", "calc": {"pump_flow": 8e-05, "fed_flow": 8e-05, "demand": 8e-05, "feed_loss": 9000}}]},
		"want": [],
	},
	"short without them": {
		"input": {"fuel": [{"path": "fuel", "calc": {"pump_flow": 7.9e-05, "fed_flow": 7e-05, "demand": 8e-05, "feed_loss": 9000}}]},
		"want": [],
	},
	"not known": {
		"input": {"fuel": [{"path": "fuel", "pump": {"draws": 9}}]},
		"want": [{"subject": "fuel", "missing": ["calc.fed_flow", "calc.demand"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(feed_loss, "fuel", each.want) with input as each.input
}
