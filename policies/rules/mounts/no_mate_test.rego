package rules.mounts.no_mate_test

import data.lib.cases_test as trial
import data.rules.mounts.no_mate

cases := {
	"a mount that is not on this driveline": {
		"input": {"mounts": [{"path": "mounts.left", "meets": "driveline.left", "none": ["there"]}]},
		"want": [{"subject": "mounts.left", "at": "meets", "figures": {"mate": "driveline.left"}}],
	},
	"a mount that is": {
		"input": {"mounts": [{"path": "mounts.left", "meets": "driveline.left", "there": {"faces": "left"}}]},
		"want": [],
	},
	"a mount that is, and nothing is known of its half": {
		"input": {"mounts": [{"path": "mounts.left", "meets": "driveline.left", "asked": ["there"]}]},
		"want": [],
	},
	"a mount that is, without rubber": {
		"input": {"mounts": [{"path": "mounts.left", "meets": "driveline.left", "none": ["rubber"]}]},
		"want": [],
	},
	"what it meets is not said": {
		"input": {"mounts": [{"path": "mounts.left"}]},
		"want": [{"subject": "mounts.left", "missing": ["meets"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(no_mate, "mounts", each.want) with input as each.input
}
