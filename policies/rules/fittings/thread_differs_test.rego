package rules.fittings.thread_differs_test

import data.lib.cases_test as trial
import data.rules.fittings.thread_differs

cases := {
	"one size apart": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"there": {"form": "37-flare", "path": "oil.tank.out", "thread": {"text": "7/8-14"}},
				"calc": {"thread_match": "apart"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here",
			"also": ["oil.tank.out"],
			"figures": {"here": "3/4-16", "there": "7/8-14"},
		}],
	},
	"a near match is another matter": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"there": {"form": "37-flare", "path": "oil.tank.out", "thread": {"text": "7/8-14"}},
				"calc": {"thread_match": "near"},
			}],
		},
		"want": [],
	},
	"the same": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"there": {"form": "37-flare", "path": "oil.tank.out", "thread": {"text": "3/4-16"}},
				"calc": {"thread_match": "same"},
			}],
		},
		"want": [],
	},
	"genders not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "thread": {"text": "3/4-16"}},
				"there": {"form": "37-flare", "path": "oil.tank.out", "thread": {"text": "7/8-14"}},
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
				"here": {"thread": {"text": "M8x1.25"}, "form": "washer-face"},
				"there": {"thread": {"text": "M6x1"}, "form": "washer-face"},
				"calc": {"thread_match": "apart"},
			}],
		},
		"want": [],
	},
	"rods that say no form": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "rod",
				"here": {"form": "banjo", "thread": {"text": "M8x1.25"}},
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
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(thread_differs, "joints", each.want) with input as each.input
}
