package rules.fittings.near_thread_test

import data.lib.cases_test as trial
import data.rules.fittings.near_thread

cases := {
	"brake union": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"there": {
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
					"path": "brakes.front.in",
				},
				"service": "brake fluid",
				"calc": {"thread_match": "near", "near_effect": "jams"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here",
			"also": ["brakes.front.in"],
			"case": "brake",
			"figures": {"here": "M10x1", "there": "3/8-24", "effect": "jams"},
		}],
	},
	"brake union of the same thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"there": {
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
					"path": "brakes.front.in",
				},
				"service": "brake fluid",
				"calc": {"thread_match": "same", "near_effect": "jams"},
			}],
		},
		"want": [],
	},
	"oil union": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"there": {
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
					"path": "brakes.front.in",
				},
				"service": "engine oil",
				"calc": {"thread_match": "near", "near_effect": "jams"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here",
			"also": ["brakes.front.in"],
			"case": "other",
			"figures": {"here": "M10x1", "there": "3/8-24", "effect": "jams"},
		}],
	},
	"oil union of the same thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"there": {
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
					"path": "brakes.front.in",
				},
				"service": "engine oil",
				"calc": {"thread_match": "same", "near_effect": "jams"},
			}],
		},
		"want": [],
	},
	"far apart": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"there": {
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
					"path": "brakes.front.in",
				},
				"service": "engine oil",
				"calc": {"thread_match": "apart"},
			}],
		},
		"want": [],
	},
	"genders not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "inverted-flare", "thread": {"text": "M10x1"}},
				"there": {
					"form": "inverted-flare",
					"thread": {"text": "3/8-24"},
					"path": "brakes.front.in",
				},
				"service": "engine oil",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.gender", "there.gender"]}],
	},
	"threads not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "banjo"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.thread", "there.thread"]}],
	},
	"forms not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"size": "-8"},
				"there": {"size": "-8"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.form", "there.form", "here.thread", "there.thread"],
		}],
	},
	"one half not there": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["there.form", "there.thread"]}],
	},
	"a hose on a bead has none": {
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
	"a rod end": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "rod",
				"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
				"there": {"form": "banjo", "thread": {"text": "M8x1"}},
				"calc": {"thread_match": "near", "near_effect": "jams"},
			}],
		},
		"want": [],
	},
	"a brake rod end": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "rod",
				"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
				"there": {"form": "banjo", "thread": {"text": "M8x1"}},
				"service": "brake fluid",
				"calc": {"thread_match": "near", "near_effect": "jams"},
			}],
		},
		"want": [],
	},
	"rods that say no form": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "rod", "here": {"size": "M8"}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(near_thread, "joints", each.want) with input as each.input
}
