package rules.fire.bench_bottle_test

import data.lib.cases_test as trial
import data.rules.fire.bench_bottle

cases := {
	"none, then one": {
		"input": {
			"shops": [{
				"path": "shop.shop",
				"extinguisher": "foam by the door",
				"none": ["extinguisher"],
			}],
		},
		"want": [{"subject": "shop.shop", "at": "extinguisher"}],
	},
	"none": {
		"input": {"shops": [{"path": "shop.shop", "none": ["extinguisher"]}]},
		"want": [{"subject": "shop.shop", "at": "extinguisher"}],
	},
	"one": {
		"input": {"shops": [{"path": "shop.shop", "extinguisher": "foam by the door"}]},
		"want": [],
	},
	"one, and no headroom said": {
		"input": {
			"shops": [{
				"path": "shop.shop",
				"extinguisher": "foam by the door",
				"none": ["headroom"],
			}],
		},
		"want": [],
	},
	"not said, and none of something else": {
		"input": {"shops": [{"path": "shop.shop", "none": ["headroom"]}]},
		"want": [{"subject": "shop.shop", "missing": ["extinguisher"]}],
	},
	"not said": {
		"input": {"shops": [{"path": "shop.shop"}]},
		"want": [{"subject": "shop.shop", "missing": ["extinguisher"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bench_bottle, "shops", each.want) with input as each.input
}
