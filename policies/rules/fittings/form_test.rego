package rules.fittings.form_test

import data.lib.cases_test as trial
import data.rules.fittings.form

cases := {
	"slip pipe on a V-band": {
		"input": {
			"joints": [{
				"path": "exhaust.pipes.front.from",
				"kind": "pipe",
				"here": {"form": "slip"},
				"there": {"form": "V-band", "path": "driveline.ports.exhaust"},
			}],
		},
		"want": [{
			"subject": "exhaust.pipes.front.from",
			"at": "here.form",
			"also": ["driveline.ports.exhaust"],
			"figures": {"here": "slip", "there": "V-band"},
		}],
	},
	"slip pipe on a plain one": {
		"input": {
			"joints": [{
				"path": "exhaust.pipes.front.from",
				"kind": "pipe",
				"here": {"form": "slip"},
				"there": {"form": "plain-tube", "path": "driveline.ports.exhaust"},
			}],
		},
		"want": [],
	},
	"V-band on V-band": {
		"input": {
			"joints": [{
				"path": "exhaust.pipes.front.from",
				"kind": "pipe",
				"here": {"form": "V-band"},
				"there": {"form": "V-band", "path": "driveline.ports.exhaust"},
			}],
		},
		"want": [],
	},
	"not said": {
		"input": {
			"joints": [{
				"path": "shafts.prop.from",
				"kind": "shaft",
				"here": {"size": "x"},
				"there": {"size": "x"},
			}],
		},
		"want": [{"subject": "shafts.prop.from", "missing": ["here.form", "there.form"]}],
	},
	"a hose goes on a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose"},
				"there": {"form": "bead", "path": "x"},
			}],
		},
		"want": [],
	},
	"a line that says no more": {
		"input": {"joints": [{"path": "links.a.to", "kind": "line"}]},
		"want": [{"subject": "links.a.to", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(form, "joints", each.want) with input as each.input
}
