package rules.fittings.near_thread_test

import data.lib.cases_test as trial
import data.rules.fittings.near_thread

cases := {
	"a brake rod end": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "near"},
				"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
				"kind": "rod",
				"service": "brake fluid",
				"there": {"path": "x", "form": "banjo", "thread": {"text": "M8x1"}},
			}],
		},
		"want": [],
	},
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
	"a rod end": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "near"},
				"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
				"kind": "rod",
				"there": {"path": "x", "form": "banjo", "thread": {"text": "M8x1"}},
			}],
		},
		"want": [],
	},
	"a union of nobody knows what": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "near"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["brakes.front.in"],
			"at": "here",
			"case": "unsaid",
			"figures": {"effect": "jams", "here": "M10x1", "there": "3/8-24"},
		}],
	},
	"a union of nobody knows what, of the same thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "same"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"brake union": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "near"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"service": "brake fluid",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["brakes.front.in"],
			"at": "here",
			"case": "brake",
			"figures": {"effect": "jams", "here": "M10x1", "there": "3/8-24"},
		}],
	},
	"brake union of the same thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "same"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"service": "brake fluid",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"far apart": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"thread_match": "apart"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"service": "engine oil",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
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
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"service": "engine oil",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
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
	"oil union": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "near"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"service": "engine oil",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["brakes.front.in"],
			"at": "here",
			"case": "other",
			"figures": {"effect": "jams", "here": "M10x1", "there": "3/8-24"},
		}],
	},
	"oil union of the same thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"calc": {"near_effect": "jams", "thread_match": "same"},
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"kind": "line",
				"service": "engine oil",
				"there": {
					"path": "brakes.front.in",
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
				},
				"way": "thread",
			}],
		},
		"want": [],
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
		"input": {"joints": [{"path": "lines.feed.to", "here": {"size": "M8"}, "kind": "rod"}]},
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
					"calc": {"near_effect": "jams", "thread_match": "near"},
					"here": {"form": "hose", "thread": {"text": "M10x1"}},
					"kind": "line",
					"there": {"path": "x", "form": "37-flare", "thread": {"text": "3/8-24"}},
					"way": "mixed",
				},
				{
					"path": "lines.b.to",
					"calc": {"near_effect": "jams", "thread_match": "near"},
					"here": {"form": "37-flare", "thread": {"text": "M10x1"}},
					"kind": "line",
					"there": {"path": "x", "form": "hose", "thread": {"text": "3/8-24"}},
					"way": "mixed",
				},
				{
					"path": "lines.e.to",
					"calc": {"near_effect": "jams", "thread_match": "near"},
					"here": {"form": "hose", "thread": {"text": "M10x1"}},
					"kind": "line",
					"service": "engine oil",
					"there": {"path": "x", "form": "37-flare", "thread": {"text": "3/8-24"}},
					"way": "mixed",
				},
				{
					"path": "lines.c.to",
					"calc": {"near_effect": "jams", "thread_match": "near"},
					"here": {"form": "hose", "thread": {"text": "M10x1"}},
					"kind": "line",
					"service": "brake fluid",
					"there": {"path": "x", "form": "37-flare", "thread": {"text": "3/8-24"}},
					"way": "mixed",
				},
				{
					"path": "lines.d.to",
					"calc": {"near_effect": "jams", "thread_match": "near"},
					"here": {"form": "37-flare", "thread": {"text": "M10x1"}},
					"kind": "line",
					"service": "brake fluid",
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
	trial.agrees(near_thread, "joints", each.want) with input as each.input
}
