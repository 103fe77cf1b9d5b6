package rules.fittings.seal_principle_test

import data.lib.cases_test as trial
import data.rules.fittings.seal_principle

cases := {
	"cone into an O-ring port": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"seal": "cone"},
				"there": {"seal": "O-ring", "path": "oil.tank.out"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.seal",
			"also": ["oil.tank.out"],
			"figures": {"here": "cone", "there": "O-ring"},
		}],
	},
	"cone on cone": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"seal": "cone"},
				"there": {"seal": "cone", "path": "oil.tank.out"},
			}],
		},
		"want": [],
	},
	"not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"size": "-8"},
				"there": {"size": "-8"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.seal", "there.seal"]}],
	},
	"a pipe flange": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"seal": "gasket"},
				"there": {"seal": "metal-face", "path": "driveline.ports.exhaust"},
			}],
		},
		"want": [],
	},
	"a rod that says no more": {
		"input": {"joints": [{"path": "links.a.to", "kind": "rod"}]},
		"want": [{"subject": "links.a.to", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(seal_principle, "joints", each.want) with input as each.input
}
