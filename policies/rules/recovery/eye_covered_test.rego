package rules.recovery.eye_covered_test

import data.lib.cases_test as trial
import data.rules.recovery.eye_covered

cases := {
	"behind two things": {
		"input": {"tow_eyes": [{"path": "safety.tow-front", "behind": ["nose-cone", "splitter"]}]},
		"want": [{
			"subject": "safety.tow-front",
			"at": "behind",
			"figures": {"what": "nose-cone, splitter"},
		}],
	},
	"behind one": {
		"input": {"tow_eyes": [{"path": "safety.tow-front", "behind": ["nose-cone"]}]},
		"want": [{"subject": "safety.tow-front", "figures": {"what": "nose-cone"}}],
	},
	"behind none": {"input": {"tow_eyes": [{"path": "safety.tow-front", "behind": []}]}, "want": []},
	"none": {
		"input": {"tow_eyes": [{"path": "safety.tow-front", "none": ["behind"]}]},
		"want": [],
	},
	"not said": {
		"input": {"tow_eyes": [{"path": "safety.tow-front"}]},
		"want": [{"subject": "safety.tow-front", "missing": ["behind"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(eye_covered, "tow_eyes", each.want) with input as each.input
}
