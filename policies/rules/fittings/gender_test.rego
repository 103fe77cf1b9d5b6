package rules.fittings.gender_test

import data.lib.cases_test as trial
import data.rules.fittings.gender

cases := {
	"a banjo eye": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "banjo", "gender": "female"},
				"kind": "line",
				"there": {"path": "x", "form": "banjo", "gender": "female"},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"a flange": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "connector", "gender": "male"},
				"kind": "shaft",
				"there": {"path": "x", "form": "connector", "gender": "male"},
			}],
		},
		"want": [],
	},
	"a flare beside a banjo": {
		"input": {
			"joints": [
				{
					"path": "lines.a.to",
					"here": {"form": "banjo", "gender": "female"},
					"kind": "line",
					"there": {"path": "x", "form": "37-flare", "gender": "female"},
					"way": "thread",
				},
				{
					"path": "lines.b.to",
					"here": {"form": "37-flare", "gender": "female"},
					"kind": "line",
					"there": {"path": "x", "form": "banjo", "gender": "female"},
					"way": "thread",
				},
			],
		},
		"want": [],
	},
	"a half that is not there": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare", "gender": "male"},
				"kind": "line",
				"way": "not said",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["there.form", "there.gender"]}],
	},
	"a hose on a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "hose"},
				"kind": "line",
				"there": {"form": "bead"},
				"way": "clamp",
			}],
		},
		"want": [],
	},
	"gender not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare"},
				"kind": "line",
				"there": {"form": "37-flare"},
				"way": "thread",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.gender", "there.gender"]}],
	},
	"no line, and no more said": {
		"input": {
			"joints": [
				{
					"path": "rods.a.to",
					"here": {"form": "37-flare"},
					"kind": "rod",
					"there": {"path": "x", "form": "37-flare"},
				},
				{"path": "rods.b.to", "here": {"form": "37-flare"}, "kind": "rod"},
				{
					"path": "rods.c.to",
					"kind": "rod",
					"there": {"path": "x", "form": "37-flare"},
				},
			],
		},
		"want": [
			{"subject": "rods.a.to", "judged": false},
			{"subject": "rods.b.to", "judged": false},
			{"subject": "rods.c.to", "judged": false},
		],
	},
	"nothing said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"size": "-8"},
				"kind": "line",
				"there": {"size": "-8"},
				"way": "not said",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.form", "there.form", "here.gender", "there.gender"],
		}],
	},
	"one of each": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare", "gender": "female"},
				"kind": "line",
				"there": {"path": "oil.tank.out", "form": "37-flare", "gender": "male"},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"other forms, and no more said": {
		"input": {
			"joints": [
				{
					"path": "lines.a.to",
					"here": {"form": "bead"},
					"kind": "line",
					"there": {"path": "x", "form": "bead"},
					"way": "clamp",
				},
				{
					"path": "lines.b.to",
					"here": {"form": "37-flare"},
					"kind": "line",
					"there": {"path": "x", "form": "bead"},
					"way": "mixed",
				},
				{
					"path": "lines.c.to",
					"here": {"form": "bead"},
					"kind": "line",
					"there": {"path": "x", "form": "37-flare"},
					"way": "mixed",
				},
			],
		},
		"want": [
			{"subject": "lines.a.to", "judged": false},
			{"subject": "lines.b.to", "judged": false},
			{"subject": "lines.c.to", "judged": false},
		],
	},
	"two halves with sockets": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "connector", "gender": "sockets"},
				"kind": "plug",
				"there": {
					"path": "driveline.ports.loom",
					"form": "connector",
					"gender": "sockets",
				},
				"way": "connector",
			}],
		},
		"want": [{"subject": "lines.feed.to"}],
	},
	"two males": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare", "gender": "male"},
				"kind": "line",
				"there": {"path": "oil.tank.out", "form": "37-flare", "gender": "male"},
				"way": "thread",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["oil.tank.out"],
			"at": "here.gender",
			"figures": {"gender": "male"},
		}],
	},
	"banjo beside 37-flare, and no more said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"way": "thread",
				"here": {"form": "banjo"},
				"there": {"form": "37-flare"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
	"37-flare beside banjo, and no more said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"way": "thread",
				"here": {"form": "37-flare"},
				"there": {"form": "banjo"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(gender, "joints", each.want) with input as each.input
}
