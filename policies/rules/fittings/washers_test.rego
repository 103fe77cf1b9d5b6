package rules.fittings.washers_test

import data.lib.cases_test as trial
import data.rules.fittings.washers

cases := {
	"none, then two": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"meet": {"washers": "2 copper", "none": ["washers"]},
			}],
		},
		"want": [{"subject": "lines.brake.to", "at": "meet.washers"}],
	},
	"none": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"meet": {"none": ["washers"]},
			}],
		},
		"want": [{"subject": "lines.brake.to", "at": "meet.washers"}],
	},
	"two": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"meet": {"washers": "2 copper"},
			}],
		},
		"want": [],
	},
	"two, and no clamp": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"meet": {"washers": "2 copper", "none": ["clamp"]},
			}],
		},
		"want": [],
	},
	"a flare without washers": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"meet": {"washers": "2 copper", "none": ["washers"]},
			}],
		},
		"want": [{"subject": "lines.brake.to", "judged": false}],
	},
	"form not said": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"meet": {"washers": "2 copper", "none": ["washers"]},
			}],
		},
		"want": [{"subject": "lines.brake.to", "missing": ["here.form"]}],
	},
	"a rod": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "rod",
				"meet": {"washers": "2 copper", "none": ["washers"]},
			}],
		},
		"want": [{"subject": "lines.brake.to", "judged": false}],
	},
	"not said, and no clamp": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"meet": {"none": ["clamp"]},
			}],
		},
		"want": [{"subject": "lines.brake.to", "missing": ["meet.washers"]}],
	},
	"not said": {
		"input": {
			"joints": [{"path": "lines.brake.to", "kind": "line", "here": {"form": "banjo"}}],
		},
		"want": [{"subject": "lines.brake.to", "missing": ["meet.washers"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(washers, "joints", each.want) with input as each.input
}
