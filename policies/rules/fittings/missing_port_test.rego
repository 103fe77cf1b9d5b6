package rules.fittings.missing_port_test

import data.lib.cases_test as trial
import data.rules.fittings.missing_port

cases := {
	"no such port": {
		"input": {"joints": [{"path": "lines.feed.to", "meet": {"port": "driveline.oil-feed"}, "none": ["there"]}]},
		"want": [{
			"subject": "lines.feed.to",
			"at": "meet.port",
			"figures": {"port": "driveline.oil-feed"},
		}],
	},
	"its port": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"meet": {"port": "driveline.oil-feed"},
				"there": {"form": "37-flare"},
			}],
		},
		"want": [],
	},
	"its port, and the car's own end looked for in vain": {
		"input": {"joints": [{"path": "lines.feed.to", "meet": {"port": "driveline.oil-feed"}, "none": ["here"]}]},
		"want": [],
	},
	"its port, and what end it has is not known": {
		"input": {"joints": [{"path": "lines.feed.to", "meet": {"port": "driveline.oil-feed"}, "asked": ["there"]}]},
		"want": [],
	},
	"not said": {
		"input": {"joints": [{"path": "lines.feed.to", "there": {"form": "37-flare"}}]},
		"want": [{"subject": "lines.feed.to", "missing": ["meet.port"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(missing_port, "joints", each.want) with input as each.input
}
