package rules.fasteners.nylon_hot_test

import data.lib.cases_test as trial
import data.rules.fasteners.nylon_hot

cases := {
	"beside the exhaust": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "nut": "nyloc-nut", "hot": 395}]},
		"want": [{"subject": "fasteners.hanger.bolts", "at": "nut", "figures": {"hot": 395, "most": 394.2611111111111}}],
	},
	"as hot as it may be": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "nut": "nyloc-nut", "hot": 394.2611111111111}]},
		"want": [],
	},
	"another nut": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "nut": "all-metal-locknut", "hot": 500}]},
		"want": [],
	},
	"another nut, and no heat said": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "nut": "nut"}]},
		"want": [{"subject": "fasteners.hanger.bolts", "judged": false}],
	},
	"a tapped hole": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "tapped": "steel", "hot": 500}]},
		"want": [{"subject": "fasteners.hanger.bolts", "judged": false}],
	},
	"heat not said": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "nut": "nyloc-nut"}]},
		"want": [{"subject": "fasteners.hanger.bolts", "missing": ["hot"]}],
	},
	"nut not said": {
		"input": {"fastenings": [{"path": "fasteners.hanger.bolts", "hot": 500}]},
		"want": [{"subject": "fasteners.hanger.bolts", "missing": ["nut|tapped"]}],
	},
	"a band": {
		"input": {"fastenings": [{"path": "fasteners.band.bolts", "what": "band clamp", "hot": 500}]},
		"want": [],
	},
	"a quarter turn": {
		"input": {"fastenings": [{"path": "access.bonnet.held", "head": "quarter-turn"}]},
		"want": [],
	},
	"a press stud": {
		"input": {"fastenings": [{"path": "access.gaiter.held", "head": "press-stud"}]},
		"want": [],
	},
	"a rivet": {
		"input": {"fastenings": [{"path": "access.tray.held", "head": "rivet"}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(nylon_hot, "fastenings", each.want) with input as each.input
}
