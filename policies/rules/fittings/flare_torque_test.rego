package rules.fittings.flare_torque_test

import data.lib.cases_test as trial
import data.rules.fittings.flare_torque

cases := {
	"slack": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
				"meet": {"torque": 30},
				"calc": {"torque_least": 30.5, "torque_most": 39.5},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "meet.torque",
			"case": "under",
			"figures": {"torque": 30, "least": 30.5, "most": 39.5},
		}],
	},
	"as low as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
				"meet": {"torque": 30.5},
				"calc": {"torque_least": 30.5, "torque_most": 39.5},
			}],
		},
		"want": [],
	},
	"too tight": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
				"meet": {"torque": 40},
				"calc": {"torque_least": 30.5, "torque_most": 39.5},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "meet.torque",
			"case": "over",
			"figures": {"torque": 40, "least": 30.5, "most": 39.5},
		}],
	},
	"as high as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
				"meet": {"torque": 39.5},
				"calc": {"torque_least": 30.5, "torque_most": 39.5},
			}],
		},
		"want": [],
	},
	"no make-up named": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
				"meet": {"torque": 35},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["calc.torque_least", "calc.torque_most"]}],
	},
	"no torque": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
				"calc": {"torque_least": 30.5, "torque_most": 39.5},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["meet.torque"]}],
	},
	"a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose"},
				"there": {"form": "bead"},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(flare_torque, "joints", each.want) with input as each.input
}
