package rules.fittings.seat_angle_test

import data.lib.cases_test as trial
import data.rules.fittings.seat_angle

cases := {
	"37 into 45": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "45-flare", "path": "fuel.rail.in"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.form",
			"also": ["fuel.rail.in"],
			"figures": {"here": "37-flare", "there": "45-flare"},
		}],
	},
	"bubble into inverted": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "bubble-flare"},
				"there": {"form": "inverted-flare", "path": "fuel.rail.in"},
			}],
		},
		"want": [{"subject": "lines.feed.to"}],
	},
	"alike": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare", "path": "fuel.rail.in"},
			}],
		},
		"want": [],
	},
	"only the other half said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"size": "-8"},
				"there": {"form": "37-flare"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form"]}],
	},
	"neither said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"size": "-8"},
				"there": {"size": "-8"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"no flare at all": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"there": {"form": "banjo"},
			}],
		},
		"want": [],
	},
	"flare into something else": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "O-ring-boss"},
			}],
		},
		"want": [],
	},
	"rod that says no form": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "rod",
				"here": {"size": "M8"},
				"there": {"form": "rod-end"},
			}],
		},
		"want": [],
	},
	"rod to a part that says no form": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "rod", "here": {"form": "rod-end"}}]},
		"want": [],
	},
	"no flare, and no more said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "banjo"},
				"there": {"form": "bead", "path": "oil.tank.ports.out"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
	"a flare on something else, either way": {
		"input": {
			"joints": [
				{
					"path": "lines.feed.to",
					"kind": "line",
					"here": {"form": "37-flare"},
					"there": {"form": "O-ring-boss", "path": "oil.tank.ports.out"},
				},
				{
					"path": "lines.feed.from",
					"kind": "line",
					"here": {"form": "O-ring-boss"},
					"there": {"form": "37-flare", "path": "oil.tank.ports.in"},
				},
			],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(seat_angle, "joints", each.want) with input as each.input
}
