package rules.fasteners.single_use_test

import data.lib.cases_test as trial
import data.rules.fasteners.single_use

cases := {
	"used once, undone": {
		"input": {
			"fastenings": [{
				"path": "shafts.prop.bolts",
				"undone": true,
				"use_once": true,
				"what": "stretch bolt",
				"count": 6,
				"holds": "the shaft prop",
			}],
		},
		"want": [{
			"subject": "shafts.prop.bolts",
			"at": "use_once",
			"figures": {"count": 6, "holds": "the shaft prop"},
		}],
	},
	"used again, undone": {
		"input": {
			"fastenings": [{
				"path": "shafts.prop.bolts",
				"undone": true,
				"use_once": false,
				"what": "stretch bolt",
				"count": 6,
				"holds": "the shaft prop",
			}],
		},
		"want": [],
	},
	"used once, left alone": {
		"input": {
			"fastenings": [{
				"path": "shafts.prop.bolts",
				"undone": false,
				"use_once": true,
				"what": "stretch bolt",
				"count": 6,
				"holds": "the shaft prop",
			}],
		},
		"want": [{"subject": "shafts.prop.bolts", "judged": false}],
	},
	"plain bolts": {
		"input": {
			"fastenings": [{
				"path": "shafts.prop.bolts",
				"undone": true,
				"count": 6,
				"holds": "the shaft prop",
			}],
		},
		"want": [{"subject": "shafts.prop.bolts", "judged": true}],
	},
	"special bolts left alone": {
		"input": {
			"fastenings": [{
				"path": "shafts.prop.bolts",
				"undone": false,
				"what": "stretch bolt",
				"count": 6,
				"holds": "the shaft prop",
			}],
		},
		"want": [{"subject": "shafts.prop.bolts", "judged": false}],
	},
	"special bolts of which it is not said": {
		"input": {
			"fastenings": [{
				"path": "shafts.prop.bolts",
				"undone": true,
				"what": "stretch bolt",
				"count": 6,
				"holds": "the shaft prop",
			}],
		},
		"want": [{"subject": "shafts.prop.bolts", "missing": ["use_once"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(single_use, "fastenings", each.want) with input as each.input
}
