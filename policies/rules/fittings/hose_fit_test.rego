package rules.fittings.hose_fit_test

import data.lib.cases_test as trial
import data.rules.fittings.hose_fit

cases := {
	"hose wider": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "diameter": 0.035005},
				"there": {"form": "bead", "path": "cooling.radiator.out", "diameter": 0.034},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.size",
			"also": ["cooling.radiator.out"],
			"case": "diameter",
			"figures": {"here": 0.035005, "there": 0.034},
		}],
	},
	"hose wider by as much as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "diameter": 0.035},
				"there": {"form": "bead", "path": "cooling.radiator.out", "diameter": 0.034},
			}],
		},
		"want": [],
	},
	"hose narrower": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "diameter": 0.034},
				"there": {"form": "bead", "path": "cooling.radiator.out", "diameter": 0.035005},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.size",
			"also": ["cooling.radiator.out"],
			"case": "diameter",
			"figures": {"here": 0.034, "there": 0.035005},
		}],
	},
	"hose narrower by as much as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "diameter": 0.034},
				"there": {"form": "bead", "path": "cooling.radiator.out", "diameter": 0.035},
			}],
		},
		"want": [],
	},
	"barb of another dash": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "dash": 10},
				"there": {"form": "barb", "path": "oil.catch-tank.in", "dash": 12},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.size",
			"also": ["oil.catch-tank.in"],
			"case": "dash",
			"figures": {"here_dash": 10, "there_dash": 12},
		}],
	},
	"barb of its own dash": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "dash": 12},
				"there": {"form": "barb", "path": "oil.catch-tank.in", "dash": 12},
			}],
		},
		"want": [],
	},
	"sizes not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose"},
				"there": {"form": "bead", "path": "cooling.radiator.out"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.diameter|here.dash", "there.diameter|there.dash"],
		}],
	},
	"forms not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"dash": 8},
				"there": {"dash": 8},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"a flare is sized by its thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "dash": 8, "diameter": 0.02},
				"there": {"form": "37-flare", "dash": 6, "diameter": 0.01, "path": "x"},
			}],
		},
		"want": [],
	},
	"the same the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "diameter": 0.01},
				"there": {"form": "37-flare", "diameter": 0.02, "path": "x"},
			}],
		},
		"want": [],
	},
	"a hose end beside a flare": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "dash": 8, "diameter": 0.02},
				"there": {"form": "37-flare", "dash": 6, "diameter": 0.01, "path": "x"},
			}],
		},
		"want": [],
	},
	"the same, the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose", "diameter": 0.01},
				"there": {"form": "37-flare", "diameter": 0.02, "path": "x"},
			}],
		},
		"want": [],
	},
	"a flare end beside a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "dash": 8, "diameter": 0.02},
				"there": {"form": "bead", "dash": 6, "diameter": 0.01, "path": "x"},
			}],
		},
		"want": [],
	},
	"a flare end beside a bead, the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "37-flare", "diameter": 0.01},
				"there": {"form": "bead", "diameter": 0.02, "path": "x"},
			}],
		},
		"want": [],
	},
	"an exhaust pipe slips": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "hose", "diameter": 0.05, "dash": 4},
				"there": {"form": "bead", "diameter": 0.06, "dash": 5, "path": "x"},
			}],
		},
		"want": [],
	},
	"an exhaust pipe slips the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "hose", "diameter": 0.06},
				"there": {"form": "bead", "diameter": 0.05, "path": "x"},
			}],
		},
		"want": [],
	},
	"a pipe that says no form": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "pipe", "there": {"form": "bead"}}]},
		"want": [],
	},
	"a pipe to a part that says no form": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "pipe", "here": {"form": "bead"}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hose_fit, "joints", each.want) with input as each.input
}
