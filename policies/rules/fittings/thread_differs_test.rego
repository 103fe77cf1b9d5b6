package rules.fittings.thread_differs_test

import data.lib.cases_test as trial
import data.rules.fittings.thread_differs

cases := {
	"a hose on a bead has none": {
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
	"a near match is another matter": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"thread_match": "near"},
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"kind": "line",
				"there": {
					"path": "oil.tank.out",
					"form": "37-flare",
					"thread": {"text": "7/8-14"},
				},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"a rod end": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"thread_match": "apart"},
				"here": {"form": "washer-face", "thread": {"text": "M8x1.25"}},
				"kind": "rod",
				"there": {"path": "x", "form": "washer-face", "thread": {"text": "M6x1"}},
			}],
		},
		"want": [],
	},
	"forms not said": {
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
			"missing": ["here.form", "there.form", "here.thread", "there.thread"],
		}],
	},
	"genders not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"kind": "line",
				"there": {
					"path": "oil.tank.out",
					"form": "37-flare",
					"thread": {"text": "7/8-14"},
				},
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
	"one half not there": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"kind": "line",
				"way": "not said",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["there.form", "there.thread"]}],
	},
	"one size apart": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"thread_match": "apart"},
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"kind": "line",
				"there": {
					"path": "oil.tank.out",
					"form": "37-flare",
					"thread": {"text": "7/8-14"},
				},
				"way": "thread",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["oil.tank.out"],
			"at": "here",
			"figures": {"here": "3/4-16", "there": "7/8-14"},
		}],
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
	"rods that say no form": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
				"kind": "rod",
			}],
		},
		"want": [],
	},
	"rods that say no form here": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "rod",
				"there": {"form": "banjo", "thread": {"text": "M8x1.25"}},
			}],
		},
		"want": [],
	},
	"the same": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"thread_match": "same"},
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"kind": "line",
				"there": {
					"path": "oil.tank.out",
					"form": "37-flare",
					"thread": {"text": "3/4-16"},
				},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"threads not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "37-flare"},
				"kind": "line",
				"there": {"form": "banjo"},
				"way": "thread",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.thread", "there.thread"]}],
	},
	"threads of ends that do not screw together": {
		"input": {
			"joints": [
				{
					"path": "lines.a.to",
					"calc": {"near_effect": "jams", "thread_match": "apart"},
					"here": {"form": "hose", "thread": {"text": "M10x1"}},
					"kind": "line",
					"there": {"path": "x", "form": "37-flare", "thread": {"text": "3/8-24"}},
					"way": "mixed",
				},
				{
					"path": "lines.b.to",
					"calc": {"near_effect": "jams", "thread_match": "apart"},
					"here": {"form": "37-flare", "thread": {"text": "M10x1"}},
					"kind": "line",
					"there": {"path": "x", "form": "hose", "thread": {"text": "3/8-24"}},
					"way": "mixed",
				},
			],
		},
		"want": [],
	},
	"threads that nothing compared, and that need not be": {
		"input": {
			"joints": [
				{
					"path": "rods.a.to",
					"here": {"form": "stud", "thread": {"text": "M8x1.25"}},
					"kind": "rod",
					"there": {"path": "x", "form": "stud", "thread": {"text": "M8x1"}},
				},
				{
					"path": "lines.a.to",
					"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
					"kind": "line",
					"there": {"path": "x", "form": "bead"},
					"way": "mixed",
				},
				{
					"path": "lines.b.to",
					"here": {"form": "bead"},
					"kind": "line",
					"there": {"path": "x", "form": "banjo", "thread": {"text": "M8x1.25"}},
					"way": "mixed",
				},
			],
		},
		"want": [
			{"subject": "rods.a.to", "judged": false},
			{"subject": "lines.a.to", "judged": false},
			{"subject": "lines.b.to", "judged": false},
		],
	},
	"only the thread of one half is said, not here": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"way": "thread",
				"here": {"form": "37-flare"},
				"there": {
					"form": "37-flare",
					"thread": {
						"text": "9/16-18",
						"system": "unified",
						"major": 0.0142875,
						"pitch": 0.0014111,
					},
				},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.thread"]}],
	},
	"only the thread of one half is said, not there": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"way": "thread",
				"there": {"form": "37-flare"},
				"here": {
					"form": "37-flare",
					"thread": {
						"text": "9/16-18",
						"system": "unified",
						"major": 0.0142875,
						"pitch": 0.0014111,
					},
				},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["there.thread"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(thread_differs, "joints", each.want) with input as each.input
}
