package rules.fittings.gender_test

import data.lib.cases_test as trial
import data.rules.fittings.gender

cases := {
	"two males": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "gender": "male"},
				"there": {"form": "37-flare", "gender": "male", "path": "oil.tank.out"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.gender",
			"also": ["oil.tank.out"],
			"figures": {"gender": "male"},
		}],
	},
	"one of each": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "gender": "female"},
				"there": {"form": "37-flare", "gender": "male", "path": "oil.tank.out"},
			}],
		},
		"want": [],
	},
	"two halves with sockets": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "plug",
				"here": {"form": "connector", "gender": "sockets"},
				"there": {"form": "connector", "gender": "sockets", "path": "driveline.ports.loom"},
			}],
		},
		"want": [{"subject": "lines.feed.to"}],
	},
	"gender not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare"},
				"there": {"form": "37-flare"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.gender", "there.gender"]}],
	},
	"nothing said": {
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
			"missing": ["here.form", "there.form", "here.gender", "there.gender"],
		}],
	},
	"a half that is not there": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "gender": "male"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["there.form", "there.gender"]}],
	},
	"a hose on a bead": {
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
	"a banjo eye": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "banjo", "gender": "female"},
				"there": {"form": "banjo", "gender": "female"},
			}],
		},
		"want": [],
	},
	"a flange": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "shaft",
				"here": {"form": "connector", "gender": "male"},
				"there": {"form": "connector", "gender": "male"},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(gender, "joints", each.want) with input as each.input
}
