package rules.exhaust.hot_gap_test

import data.lib.cases_test as trial
import data.rules.exhaust.hot_gap

cases := {
	"a bare hose beside the pipe": {
		"input": {"gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.299, "none": ["shield"]}]},
		"want": [{
			"subject": "gaps.pipe-to-hose",
			"at": "is",
			"case": "soft",
			"figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.299, "least": 0.3},
		}],
	},
	"fuel close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "fuel"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"fuel vapour close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "fuel vapour"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"engine oil close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"gearbox oil close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "gearbox oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"axle oil close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "axle oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"brake fluid close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "brake fluid"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"clutch fluid close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "clutch fluid"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"steering fluid close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "steering fluid"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "line", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.1016}}],
	},
	"oil at four inches": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1016, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "soft", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1016, "least": 0.3}}],
	},
	"oil, a little too near": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.299, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "soft", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.299, "least": 0.3}}],
	},
	"oil far enough": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.3, "none": ["shield"]}]},
		"want": [],
	},
	"oil close by, behind a sleeve": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "shield": "sleeve", "none": ["hot"]}]},
		"want": [],
	},
	"water close by": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "coolant"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}]},
		"want": [{"subject": "gaps.pipe-to-hose", "at": "is", "case": "soft", "figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.3}}],
	},
	"oil close by a wishbone": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.hose-to-arm", "between": ["steering.arm", "lines.box-oil"], "is": 0.05, "none": ["shield"]}, {"path": "gaps.hose-to-pipe", "between": ["steering.arm", "lines.box-oil"], "is": 0.2, "none": ["shield"]}]},
		"want": [],
	},
	"oil, a little too near, behind a sleeve": {
		"input": {"lines": [{"path": "lines.box-oil", "service": "engine oil"}], "gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.2, "shield": "sleeve", "none": ["hot"]}]},
		"want": [],
	},
	"water close by, and oil elsewhere": {
		"input": {
			"lines": [
				{"path": "lines.box-oil", "service": "coolant"},
				{"path": "lines.oil-feed", "service": "engine oil"},
			],
			"gaps": [{"path": "gaps.pipe-to-hose", "between": ["exhaust.front-pipe", "lines.box-oil"], "is": 0.1015, "none": ["shield"]}],
		},
		"want": [{
			"subject": "gaps.pipe-to-hose",
			"at": "is",
			"case": "soft",
			"figures": {"soft": "lines.box-oil", "hot": "exhaust.front-pipe", "gap": 0.1015, "least": 0.3},
		}],
	},
	"a loom close by, behind a sleeve": {
		"input": {"gaps": [{"path": "gaps.pipe-to-loom", "between": ["exhaust.front-pipe", "plugs.loom-a"], "is": 0.05, "shield": "sleeve", "none": ["hot"]}]},
		"want": [],
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
