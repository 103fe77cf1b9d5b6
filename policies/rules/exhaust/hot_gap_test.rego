package rules.exhaust.hot_gap_test

import data.lib.cases_test as trial
import data.rules.exhaust.hot_gap

cases := {
	"a bare hose beside the pipe": {
		"input": {"gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.299, "none": ["shield"]}]},
		"want": [{
			"subject": "gaps.pipe-to-hose",
			"at": "is",
			"figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.299, "least": 0.3},
		}],
	},
	"far enough": {
		"input": {"gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.3, "none": ["shield"]}]},
		"want": [],
	},
	"shielded": {
		"input": {"gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.058, "shield": "sleeve", "none": ["hot"]}]},
		"want": [],
	},
	"beside sheet metal": {
		"input": {"gaps": [
			{"path": "gaps.pipe-to-floor", "between": ["exhaust.front-pipe", "cabin floor"], "is": 0.03, "none": ["shield"]},
			{"path": "gaps.pipe-to-tunnel", "between": ["exhaust.front-pipe", "tunnel"]},
		]},
		"want": [{"subject": "gaps.pipe-to-tunnel", "judged": false}],
	},
	"away from the heat": {
		"input": {"gaps": [
			{"path": "gaps.hose-to-arm", "between": ["steering.arm", "lines.brake"], "is": 0.03, "none": ["shield"]},
			{"path": "gaps.hose-to-wheel", "between": ["wheel", "lines.brake"]},
		]},
		"want": [],
	},
	"not measured": {
		"input": {"gaps": [{"path": "gaps.pipe-to-hose", "between": ["driveline.turbo", "plugs.loom-a"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "missing": ["is", "shield"]}],
	},
	"between what is not said": {
		"input": {"gaps": [{"path": "gaps.pipe-to-hose", "is": 0.058}]},
		"want": [{"subject": "gaps.pipe-to-hose", "missing": ["between"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hot_gap, "gaps", each.want) with input as each.input
}
