package rules.fire.system_handles_test

import data.lib.cases_test as trial
import data.rules.fire.system_handles

cases := {
	"in the cockpit only": {
		"input": {"fire_systems": [{"path": "safety.fire-system", "handles": ["cockpit"]}]},
		"want": [{"subject": "safety.fire-system", "at": "handles"}],
	},
	"outside": {
		"input": {"fire_systems": [{"path": "safety.fire-system", "handles": ["scuttle left"]}]},
		"want": [],
	},
	"both": {
		"input": {
			"fire_systems": [{"path": "safety.fire-system", "handles": ["cockpit", "scuttle left"]}],
		},
		"want": [],
	},
	"not said": {
		"input": {"fire_systems": [{"path": "safety.fire-system"}]},
		"want": [{"subject": "safety.fire-system", "missing": ["handles"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(system_handles, "fire_systems", each.want) with input as each.input
}
