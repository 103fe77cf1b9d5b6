package rules.cage.padding_test

import data.lib.cases_test as trial
import data.rules.cage.padding

cases := {
	"of the standard": {
		"input": {"cars": [{"path": "car", "cage": {"padding": "FIA 8857-2001 type A"}}]},
		"want": [],
	},
	"pipe foam": {
		"input": {"cars": [{"path": "car", "cage": {"padding": "foam tube"}}]},
		"want": [{
			"subject": "car",
			"case": "unmarked",
			"at": "cage.padding",
			"figures": {"padding": "foam tube"},
		}],
	},
	"none": {
		"input": {"cars": [{"path": "car", "cage": {"none": ["padding"]}}]},
		"want": [{"subject": "car", "case": "bare", "at": "cage.padding"}],
	},
	"none of something else": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {"padding": "FIA 8857-2001 type A", "none": ["standard"]},
			}],
		},
		"want": [],
	},
	"padding, and none": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {"padding": "FIA 8857-2001 type A", "none": ["padding"]},
			}],
		},
		"want": [{"subject": "car", "case": "bare"}],
	},
	"not said, and none of something else": {
		"input": {"cars": [{"path": "car", "cage": {"none": ["standard"]}}]},
		"want": [{"subject": "car", "missing": ["cage.padding"]}],
	},
	"no cage": {"input": {"cars": [{"path": "car", "none": ["cage"]}]}, "want": []},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{"subject": "car", "missing": ["cage.padding"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(padding, "cars", each.want) with input as each.input
}
