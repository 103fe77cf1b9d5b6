package rules.dolly.held_test

import data.lib.cases_test as trial
import data.rules.dolly.held

cases := {
	"two straps": {
		"input": {"support": [{"path": "support", "dolly": "long", "carrier": {"straps": 2}}]},
		"want": [],
	},
	"no straps": {
		"input": {"support": [{"path": "support", "dolly": "long", "carrier": {"straps": 0}}]},
		"want": [{"subject": "support", "at": "carrier.straps", "figures": {"dolly": "long"}}],
	},
	"one strap": {
		"input": {"support": [{"path": "support", "dolly": "long", "carrier": {"straps": 1}}]},
		"want": [],
	},
	"none": {
		"input": {
			"support": [{"path": "support", "dolly": "long", "carrier": {"none": ["straps"]}}],
		},
		"want": [{"subject": "support", "at": "carrier.straps", "figures": {"dolly": "long"}}],
	},
	"straps, and none": {
		"input": {
			"support": [{
				"path": "support",
				"dolly": "long",
				"carrier": {"straps": 2, "none": ["straps"]},
			}],
		},
		"want": [{"subject": "support", "at": "carrier.straps"}],
	},
	"none of something else": {
		"input": {
			"support": [{
				"path": "support",
				"dolly": "long",
				"carrier": {"straps": 2, "none": ["frame"]},
			}],
		},
		"want": [],
	},
	"not said, and none of something else": {
		"input": {
			"support": [{"path": "support", "dolly": "long", "carrier": {"none": ["frame"]}}],
		},
		"want": [{"subject": "support", "missing": ["carrier.straps"]}],
	},
	"straps not said": {
		"input": {"support": [{"path": "support", "dolly": "long"}]},
		"want": [{"subject": "support", "missing": ["carrier.straps"]}],
	},
	"no dolly": {"input": {"support": [{"path": "support", "none": ["dolly"]}]}, "want": []},
	"not said on which": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["dolly"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(held, "support", each.want) with input as each.input
}
