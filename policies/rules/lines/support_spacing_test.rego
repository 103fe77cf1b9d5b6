package rules.lines.support_spacing_test

import data.lib.cases_test as trial
import data.rules.lines.support_spacing

cases := {
	"clips too far apart": {
		"input": {"lines": [{"path": "lines.feed", "clips": 0.61}]},
		"want": [{
			"subject": "lines.feed",
			"at": "clips",
			"figures": {"run": 0.61, "most": 0.6096},
		}],
	},
	"clips at two feet": {
		"input": {"lines": [{"path": "lines.feed", "clips": 0.6096}]},
		"want": [],
	},
	"long and without clips": {
		"input": {"lines": [{"path": "lines.feed", "none": ["clips"], "hose": {"length": 0.61}}]},
		"want": [{"subject": "lines.feed", "at": "clips", "figures": {"run": 0.61}}],
	},
	"short and without clips": {
		"input": {"lines": [{"path": "lines.feed", "none": ["clips"], "hose": {"length": 0.6096}}]},
		"want": [],
	},
	"nothing said of clips": {
		"input": {"lines": [{"path": "lines.feed", "hose": {"length": 2}}]},
		"want": [{"subject": "lines.feed", "missing": ["clips"]}],
	},
	"without clips, and no length": {
		"input": {"lines": [{"path": "lines.feed", "none": ["clips"]}]},
		"want": [{"subject": "lines.feed", "missing": ["hose.length"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(support_spacing, "lines", each.want) with input as each.input
}
