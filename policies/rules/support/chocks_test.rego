package rules.support.chocks_test

import data.lib.cases_test as trial
import data.rules.support.chocks

cases := {
	"both rear wheels": {
		"input": {"support": [{
			"path": "support",
			"wheels_down": ["rear-left", "rear-right"],
			"none": ["chocked"],
			"unchocked": ["rear-left", "rear-right"],
		}]},
		"want": [{
			"subject": "support",
			"at": "chocked",
			"figures": {"wheels": "rear-left, rear-right"},
		}],
	},
	"one of them": {
		"input": {"support": [{
			"path": "support",
			"wheels_down": ["rear-left", "rear-right"],
			"chocked": ["rear-left"],
			"unchocked": ["rear-right"],
		}]},
		"want": [{"subject": "support", "figures": {"wheels": "rear-right"}}],
	},
	"none of them": {
		"input": {"support": [{
			"path": "support",
			"wheels_down": ["rear-left", "rear-right"],
			"chocked": ["rear-left"],
			"unchocked": [],
		}]},
		"want": [],
	},
	"all off the floor": {
		"input": {"support": [{"path": "support", "none": ["wheels_down"], "unchocked": []}]},
		"want": [],
	},
	"chocks not said": {
		"input": {"support": [{"path": "support", "wheels_down": ["rear-left"]}]},
		"want": [{"subject": "support", "missing": ["chocked"]}],
	},
	"nothing said": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["wheels_down"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(chocks, "support", each.want) with input as each.input
}
