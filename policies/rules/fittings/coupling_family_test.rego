package rules.fittings.coupling_family_test

import data.lib.cases_test as trial
import data.rules.fittings.coupling_family

cases := {
	"two series": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "dry-break", "family": "A", "size": "-8"},
				"there": {
					"form": "dry-break",
					"path": "driveline.ports.clutch",
					"family": "B",
					"size": "-8",
				},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.family",
			"also": ["driveline.ports.clutch"],
			"case": "series",
			"figures": {"here": "A", "there": "B"},
		}],
	},
	"one series": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "dry-break", "family": "B", "size": "-8"},
				"there": {
					"form": "dry-break",
					"path": "driveline.ports.clutch",
					"family": "B",
					"size": "-8",
				},
			}],
		},
		"want": [],
	},
	"two sizes": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "dry-break", "family": "B", "size": "-6"},
				"there": {
					"form": "dry-break",
					"path": "driveline.ports.clutch",
					"family": "B",
					"size": "-8",
				},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.size",
			"also": ["driveline.ports.clutch"],
			"case": "size",
			"figures": {"here": "-6", "there": "-8"},
		}],
	},
	"two keys": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "dry-break", "family": "B", "size": "-8", "key": "1"},
				"there": {
					"form": "dry-break",
					"path": "driveline.ports.clutch",
					"family": "B",
					"size": "-8",
					"key": "2",
				},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.key",
			"also": ["driveline.ports.clutch"],
			"case": "key",
			"figures": {"here": "1", "there": "2"},
		}],
	},
	"one key": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "dry-break", "family": "B", "size": "-8", "key": "2"},
				"there": {
					"form": "dry-break",
					"path": "driveline.ports.clutch",
					"family": "B",
					"size": "-8",
					"key": "2",
				},
			}],
		},
		"want": [],
	},
	"nothing said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "push-connector"},
				"there": {"form": "push-connector", "path": "driveline.ports.clutch"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.family", "there.family", "here.size", "there.size"],
		}],
	},
	"forms not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"size": "-8", "family": "A"},
				"there": {"size": "-8", "family": "A"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"a flare": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "family": "A", "size": "-8", "key": "1"},
				"there": {
					"form": "37-flare",
					"path": "driveline.ports.clutch",
					"family": "B",
					"size": "-6",
					"key": "2",
				},
			}],
		},
		"want": [],
	},
	"a coupling on a flare": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "dry-break", "family": "A", "size": "-8", "key": "1"},
				"there": {"form": "37-flare", "path": "x", "family": "B", "size": "-6", "key": "2"},
			}],
		},
		"want": [],
	},
	"a flare on a coupling": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "family": "A", "size": "-8", "key": "1"},
				"there": {
					"form": "dry-break",
					"path": "x",
					"family": "B",
					"size": "-6",
					"key": "2",
				},
			}],
		},
		"want": [],
	},
	"no line": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "plug",
				"here": {"form": "dry-break", "family": "A", "size": "-8", "key": "1"},
				"there": {
					"form": "dry-break",
					"path": "x",
					"family": "B",
					"size": "-6",
					"key": "2",
				},
			}],
		},
		"want": [],
	},
	"no line, no form here": {
		"input": {
			"joints": [{"path": "lines.feed.to", "kind": "plug", "there": {"form": "dry-break"}}],
		},
		"want": [],
	},
	"no line, no form there": {
		"input": {
			"joints": [{"path": "lines.feed.to", "kind": "plug", "here": {"form": "dry-break"}}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(coupling_family, "joints", each.want) with input as each.input
}
