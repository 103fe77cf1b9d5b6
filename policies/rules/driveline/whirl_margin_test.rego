package rules.driveline.whirl_margin_test

import data.lib.cases_test as trial
import data.rules.driveline.whirl_margin

cases := {
	"near": {
		"input": {"shafts": [{"path": "shafts.prop", "calc": {"whirling_share": 0.751}}]},
		"want": [{"subject": "shafts.prop", "at": "tube", "figures": {"share": 0.751, "most": 0.75}}],
	},
	"far enough": {
		"input": {"shafts": [{"path": "shafts.prop", "calc": {"whirling_share": 0.75}}]},
		"want": [],
	},
	"at it, which is another rule's": {
		"input": {"shafts": [{"path": "shafts.prop", "calc": {"whirling_share": 1}}]},
		"want": [],
	},
	"not known": {
		"input": {"shafts": [{"path": "shafts.prop"}]},
		"want": [{"subject": "shafts.prop", "missing": ["calc.whirling_share"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(whirl_margin, "shafts", each.want) with input as each.input
}
