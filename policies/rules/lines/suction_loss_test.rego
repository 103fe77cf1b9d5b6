package rules.lines.suction_loss_test

import data.lib.cases_test as trial
import data.rules.lines.suction_loss

cases := {
	"just enough": {
		"input": {
			"lines": [{
				"path": "lines.suck",
				"service": "engine oil",
				"pumped_by": "suction",
				"pump": {"path": "driveline.pumps.oil", "inlet_least": -30000},
				"calc": {"inlet_pressure": -30000},
			}],
		},
		"want": [],
	},
	"starved": {
		"input": {
			"lines": [{
				"path": "lines.suck",
				"service": "engine oil",
				"pumped_by": "suction",
				"pump": {"path": "driveline.pumps.oil", "inlet_least": -30000},
				"calc": {"inlet_pressure": -31000},
			}],
		},
		"want": [{
			"subject": "lines.suck",
			"at": "hose",
			"also": ["driveline.pumps.oil"],
			"figures": {"inlet": -31000, "least": -30000},
		}],
	},
	"water": {
		"input": {
			"lines": [{
				"path": "lines.suck",
				"service": "coolant",
				"pumped_by": "suction",
				"pump": {"path": "driveline.pumps.oil", "inlet_least": -30000},
				"calc": {"inlet_pressure": -31000},
			}],
		},
		"want": [{"subject": "lines.suck", "judged": false}],
	},
	"pressure side": {
		"input": {
			"lines": [{
				"path": "lines.suck",
				"service": "engine oil",
				"pumped_by": "pump",
				"pump": {"path": "driveline.pumps.oil", "inlet_least": -30000},
				"calc": {"inlet_pressure": -31000},
			}],
		},
		"want": [{"subject": "lines.suck", "judged": false}],
	},
	"service not said": {
		"input": {
			"lines": [{
				"path": "lines.suck",
				"pumped_by": "suction",
				"pump": {"path": "driveline.pumps.oil", "inlet_least": -30000},
				"calc": {"inlet_pressure": -30000},
			}],
		},
		"want": [{"subject": "lines.suck", "missing": ["service"]}],
	},
	"nothing known": {
		"input": {
			"lines": [{"path": "lines.suck", "service": "engine oil", "pumped_by": "suction"}],
		},
		"want": [{"subject": "lines.suck", "missing": ["calc.inlet_pressure", "pump.inlet_least"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(suction_loss, "lines", each.want) with input as each.input
}
