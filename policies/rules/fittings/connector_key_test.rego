package rules.fittings.connector_key_test

import data.lib.cases_test as trial
import data.rules.fittings.connector_key

cases := {
	"two sizes": {
		"input": {
			"joints": [{
				"path": "plugs.engine",
				"kind": "plug",
				"here": {"size": "size-24", "key": "key-N"},
				"there": {"size": "size-22", "key": "key-N", "path": "driveline.ports.loom"},
			}],
		},
		"want": [{
			"subject": "plugs.engine",
			"at": "here.size",
			"also": ["driveline.ports.loom"],
			"case": "size",
			"figures": {"here": "size-24", "there": "size-22"},
		}],
	},
	"alike": {
		"input": {
			"joints": [{
				"path": "plugs.engine",
				"kind": "plug",
				"here": {"size": "size-24", "key": "key-N"},
				"there": {"size": "size-24", "key": "key-N", "path": "driveline.ports.loom"},
			}],
		},
		"want": [],
	},
	"two keys": {
		"input": {
			"joints": [{
				"path": "plugs.engine",
				"kind": "plug",
				"here": {"size": "size-24", "key": "key-N"},
				"there": {"size": "size-24", "key": "key-A", "path": "driveline.ports.loom"},
			}],
		},
		"want": [{
			"subject": "plugs.engine",
			"at": "here.key",
			"also": ["driveline.ports.loom"],
			"case": "key",
			"figures": {"here": "key-N", "there": "key-A"},
		}],
	},
	"nothing said": {
		"input": {"joints": [{"path": "plugs.engine", "kind": "plug"}]},
		"want": [{
			"subject": "plugs.engine",
			"missing": ["here.size", "there.size", "here.key", "there.key"],
		}],
	},
	"a hose": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"size": "-8", "key": "1"},
				"there": {"size": "-6", "key": "2", "path": "x"},
			}],
		},
		"want": [],
	},
	"a hose that says no more": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "line"}]},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(connector_key, "joints", each.want) with input as each.input
}
