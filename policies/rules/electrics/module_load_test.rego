package rules.electrics.module_load_test

import data.lib.cases_test as trial
import data.rules.electrics.module_load

cases := {
	"full": {
		"input": {
			"modules": [{"path": "electrics.modules.pdm", "rated": 100, "calc": {"load": 100}}],
		},
		"want": [],
	},
	"over": {
		"input": {
			"modules": [{"path": "electrics.modules.pdm", "rated": 100, "calc": {"load": 101}}],
		},
		"want": [{
			"subject": "electrics.modules.pdm",
			"at": "rated",
			"figures": {"load": 101, "rated": 100},
		}],
	},
	"nothing said": {
		"input": {"modules": [{"path": "electrics.modules.pdm"}]},
		"want": [{"subject": "electrics.modules.pdm", "missing": ["rated", "calc.load"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(module_load, "modules", each.want) with input as each.input
}
