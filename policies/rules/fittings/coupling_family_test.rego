package rules.fittings.coupling_family_test

import data.lib.cases_test as trial
import data.rules.fittings.coupling_family

cases := {
	"a coupling on a flare": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "A", "form": "dry-break", "key": "1", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "x",
					"family": "B",
					"form": "37-flare",
					"key": "2",
					"size": "-6",
				},
				"way": "mixed",
			}],
		},
		"want": [],
	},
	"a flare": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "A", "form": "37-flare", "key": "1", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "driveline.ports.clutch",
					"family": "B",
					"form": "37-flare",
					"key": "2",
					"size": "-6",
				},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"a flare on a coupling": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "A", "form": "37-flare", "key": "1", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "x",
					"family": "B",
					"form": "dry-break",
					"key": "2",
					"size": "-6",
				},
				"way": "mixed",
			}],
		},
		"want": [],
	},
	"forms not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "A", "size": "-8"},
				"kind": "line",
				"there": {"family": "A", "size": "-8"},
				"way": "not said",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"no line": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "A", "form": "dry-break", "key": "1", "size": "-8"},
				"kind": "plug",
				"there": {
					"path": "x",
					"family": "B",
					"form": "dry-break",
					"key": "2",
					"size": "-6",
				},
				"way": "connector",
			}],
		},
		"want": [],
	},
	"no line, and no more said": {
		"input": {
			"joints": [
				{
					"path": "rods.a.to",
					"here": {"form": "dry-break"},
					"kind": "rod",
					"there": {"path": "x", "form": "dry-break"},
				},
				{"path": "rods.b.to", "here": {"form": "dry-break"}, "kind": "rod"},
				{
					"path": "rods.c.to",
					"kind": "rod",
					"there": {"path": "x", "form": "dry-break"},
				},
			],
		},
		"want": [
			{"subject": "rods.a.to", "judged": false},
			{"subject": "rods.b.to", "judged": false},
			{"subject": "rods.c.to", "judged": false},
		],
	},
	"no line, no form here": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "plug",
				"there": {"form": "dry-break"},
				"way": "connector",
			}],
		},
		"want": [],
	},
	"no line, no form there": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "dry-break"},
				"kind": "plug",
				"way": "connector",
			}],
		},
		"want": [],
	},
	"nothing said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "push-connector"},
				"kind": "line",
				"there": {"path": "driveline.ports.clutch", "form": "push-connector"},
				"way": "coupling",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.family", "there.family", "here.size", "there.size"],
		}],
	},
	"one key": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "B", "form": "dry-break", "key": "2", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "driveline.ports.clutch",
					"family": "B",
					"form": "dry-break",
					"key": "2",
					"size": "-8",
				},
				"way": "coupling",
			}],
		},
		"want": [],
	},
	"one series": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "B", "form": "dry-break", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "driveline.ports.clutch",
					"family": "B",
					"form": "dry-break",
					"size": "-8",
				},
				"way": "coupling",
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
					"here": {"form": "dry-break"},
					"kind": "line",
					"there": {"path": "x", "form": "bead"},
					"way": "mixed",
				},
				{
					"path": "lines.c.to",
					"here": {"form": "bead"},
					"kind": "line",
					"there": {"path": "x", "form": "dry-break"},
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
	"two keys": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "B", "form": "dry-break", "key": "1", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "driveline.ports.clutch",
					"family": "B",
					"form": "dry-break",
					"key": "2",
					"size": "-8",
				},
				"way": "coupling",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["driveline.ports.clutch"],
			"at": "here.key",
			"case": "key",
			"figures": {"here": "1", "there": "2"},
		}],
	},
	"two series": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "A", "form": "dry-break", "size": "-8"},
				"kind": "line",
				"there": {
					"path": "driveline.ports.clutch",
					"family": "B",
					"form": "dry-break",
					"size": "-8",
				},
				"way": "coupling",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["driveline.ports.clutch"],
			"at": "here.family",
			"case": "series",
			"figures": {"here": "A", "there": "B"},
		}],
	},
	"two sizes": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"family": "B", "form": "dry-break", "size": "-6"},
				"kind": "line",
				"there": {
					"path": "driveline.ports.clutch",
					"family": "B",
					"form": "dry-break",
					"size": "-8",
				},
				"way": "coupling",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["driveline.ports.clutch"],
			"at": "here.size",
			"case": "size",
			"figures": {"here": "-6", "there": "-8"},
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(coupling_family, "joints", each.want) with input as each.input
}
