package rules.driveline.bolt_short_test

import data.lib.cases_test as trial
import data.rules.driveline.bolt_short

cases := {
	"two threads in the nut": {
		"input": {"shafts": [{
			"path": "shafts.left",
			"bolts": {"nut": "nut", "length": 0.02795, "thread": {"major": 0.01}},
			"grip": 0.02,
		}]},
		"want": [{
			"subject": "shafts.left",
			"at": "bolts.length",
			"figures": {"length": 0.02795, "grip": 0.02},
		}],
	},
	"level with the nut": {
		"input": {"shafts": [{
			"path": "shafts.left",
			"bolts": {"nut": "nut", "length": 0.028, "thread": {"major": 0.01}},
			"grip": 0.02,
		}]},
		"want": [],
	},
	"a longer one": {
		"input": {"shafts": [{
			"path": "shafts.left",
			"bolts": {"nut": "nut", "length": 0.035, "thread": {"major": 0.01}},
			"grip": 0.02,
		}]},
		"want": [],
	},
	"screwed into the flange": {
		"input": {"shafts": [{
			"path": "shafts.left",
			"bolts": {"none": ["nut"], "length": 0.02795, "thread": {"major": 0.01}},
			"grip": 0.02,
		}]},
		"want": [],
	},
	"nobody says what it screws into": {
		"input": {"shafts": [{
			"path": "shafts.left",
			"bolts": {"length": 0.02795, "thread": {"major": 0.01}},
			"grip": 0.02,
		}]},
		"want": [{"subject": "shafts.left", "missing": ["bolts.nut"]}],
	},
	"a shaft without bolts": {
		"input": {"shafts": [{"path": "shafts.left", "none": ["bolts"]}]},
		"want": [],
	},
	"grip not said": {
		"input": {"shafts": [{"path": "shafts.left", "bolts": {"nut": "nut", "length": 0.035, "thread": {"major": 0.01}}}]},
		"want": [{"subject": "shafts.left", "missing": ["grip"]}],
	},
	"length not said": {
		"input": {"shafts": [{"path": "shafts.left", "bolts": {"nut": "nut", "thread": {"major": 0.01}}, "grip": 0.02}]},
		"want": [{"subject": "shafts.left", "missing": ["bolts.length"]}],
	},
	"thread not said": {
		"input": {"shafts": [{"path": "shafts.left", "bolts": {"nut": "nut", "length": 0.035}, "grip": 0.02}]},
		"want": [{"subject": "shafts.left", "missing": ["bolts.thread"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bolt_short, "shafts", each.want) with input as each.input
}
