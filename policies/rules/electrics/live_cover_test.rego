package rules.electrics.live_cover_test

import data.lib.cases_test as trial
import data.rules.electrics.live_cover

cases := {
	"none, then one": {
		"input": {
			"live_poles": [{"path": "electrics.posts.main", "cover": "boot", "none": ["cover"]}],
		},
		"want": [{"subject": "electrics.posts.main", "at": "cover"}],
	},
	"none": {
		"input": {"live_poles": [{"path": "electrics.posts.main", "none": ["cover"]}]},
		"want": [{"subject": "electrics.posts.main", "at": "cover"}],
	},
	"a boot": {
		"input": {"live_poles": [{"path": "electrics.posts.main", "cover": "boot"}]},
		"want": [],
	},
	"a boot, and nothing none": {
		"input": {
			"live_poles": [{"path": "electrics.posts.main", "cover": "boot", "none": ["name"]}],
		},
		"want": [],
	},
	"not said": {
		"input": {"live_poles": [{"path": "electrics.posts.main"}]},
		"want": [{"subject": "electrics.posts.main", "missing": ["cover"]}],
	},
	"not said, and nothing none": {
		"input": {"live_poles": [{"path": "electrics.posts.main", "none": ["name"]}]},
		"want": [{"subject": "electrics.posts.main", "missing": ["cover"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(live_cover, "live_poles", each.want) with input as each.input
}
