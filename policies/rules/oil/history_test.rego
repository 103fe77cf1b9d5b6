package rules.oil.history_test

import data.lib.cases_test as trial
import data.rules.oil.history

cases := {
	"flushed before it failed": {
		"input": {
			"history": [{
				"path": "history.cooler",
				"of": "oil.cooler",
				"served_failed_engine": "2026-05-02",
				"flushed": "2026-05-01",
			}],
		},
		"want": [{
			"subject": "history.cooler",
			"at": "flushed",
			"figures": {"part": "oil.cooler", "failed": "2026-05-02"},
		}],
	},
	"flushed the same day": {
		"input": {
			"history": [{
				"path": "history.cooler",
				"of": "oil.cooler",
				"served_failed_engine": "2026-05-02",
				"flushed": "2026-05-02",
			}],
		},
		"want": [],
	},
	"never flushed": {
		"input": {
			"history": [{
				"path": "history.cooler",
				"of": "oil.cooler",
				"served_failed_engine": "2026-05-02",
				"none": ["flushed"],
			}],
		},
		"want": [{
			"subject": "history.cooler",
			"at": "flushed",
			"figures": {"part": "oil.cooler", "failed": "2026-05-02"},
		}],
	},
	"flushed, never crashed": {
		"input": {
			"history": [{
				"path": "history.cooler",
				"of": "oil.cooler",
				"served_failed_engine": "2026-05-02",
				"flushed": "2026-05-03",
				"none": ["in_crash"],
			}],
		},
		"want": [],
	},
	"not said": {
		"input": {"history": [{"path": "history.cooler", "served_failed_engine": "2026-05-02"}]},
		"want": [{"subject": "history.cooler", "missing": ["of", "flushed"]}],
	},
	"a crash": {
		"input": {
			"history": [{"path": "history.cooler", "of": "oil.cooler", "in_crash": "2025-01-01"}],
		},
		"want": [],
	},
	"a note": {
		"input": {"history": [{"path": "history.cooler", "of": "oil.cooler", "note": "one row bent"}]},
		"want": [{"subject": "history.cooler", "missing": ["served_failed_engine|in_crash"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(history, "history", each.want) with input as each.input
}
