package rules.lines.slope_test

import data.lib.cases_test as trial
import data.rules.lines.slope

cases := {
	"one way": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "engine oil",
				"from": {"port": {"name": "turbo.oil-out"}},
				"falls": "all the way",
				"climbs": "all the way",
			}],
		},
		"want": [],
	},
	"a drain with a low spot": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "engine oil",
				"from": {"port": {"name": "turbo.oil-out"}},
				"falls": "with a low spot",
				"climbs": "all the way",
			}],
		},
		"want": [{
			"subject": "lines.drain",
			"case": "drain",
			"at": "falls",
			"figures": {"runs": "with a low spot"},
		}],
	},
	"a level drain": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "engine oil",
				"from": {"port": {"name": "turbo.oil-out"}},
				"falls": "level",
				"climbs": "all the way",
			}],
		},
		"want": [{"subject": "lines.drain", "case": "drain"}],
	},
	"a bleed with a low spot": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "engine oil",
				"from": {"port": {"name": "turbo.oil-out"}},
				"falls": "all the way",
				"climbs": "with a low spot",
			}],
		},
		"want": [{
			"subject": "lines.drain",
			"case": "bleed",
			"at": "climbs",
			"figures": {"runs": "with a low spot"},
		}],
	},
	"a feed to the turbocharger": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "engine oil",
				"from": {"port": {"name": "engine.gallery"}},
				"climbs": "all the way",
			}],
		},
		"want": [{"subject": "lines.drain", "judged": true}],
	},
	"water from the turbocharger": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "coolant",
				"from": {"port": {"name": "turbo.oil-out"}},
				"climbs": "all the way",
			}],
		},
		"want": [{"subject": "lines.drain", "judged": true}],
	},
	"not said how it runs": {
		"input": {
			"lines": [{
				"path": "lines.drain",
				"service": "engine oil",
				"from": {"port": {"name": "turbo.oil-out"}},
				"climbs": "all the way",
			}],
		},
		"want": [{"subject": "lines.drain", "missing": ["falls"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(slope, "lines", each.want) with input as each.input
}
