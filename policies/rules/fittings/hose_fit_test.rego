package rules.fittings.hose_fit_test

import data.lib.cases_test as trial
import data.rules.fittings.hose_fit

cases := {
	"a flare end beside a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 8, "diameter": 0.02, "form": "37-flare"},
				"kind": "line",
				"there": {"path": "x", "dash": 6, "diameter": 0.01, "form": "bead"},
				"way": "mixed",
			}],
		},
		"want": [],
	},
	"a flare end beside a bead, the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.01, "form": "37-flare"},
				"kind": "line",
				"there": {"path": "x", "diameter": 0.02, "form": "bead"},
				"way": "mixed",
			}],
		},
		"want": [],
	},
	"a flare is sized by its thread": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 8, "diameter": 0.02, "form": "37-flare"},
				"kind": "line",
				"there": {"path": "x", "dash": 6, "diameter": 0.01, "form": "37-flare"},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"a hose end beside a flare": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 8, "diameter": 0.02, "form": "hose"},
				"kind": "line",
				"there": {"path": "x", "dash": 6, "diameter": 0.01, "form": "37-flare"},
				"way": "mixed",
			}],
		},
		"want": [],
	},
	"a pipe that says no form": {
		"input": {
			"joints": [{"path": "lines.feed.to", "kind": "pipe", "there": {"form": "bead"}}],
		},
		"want": [],
	},
	"a pipe to a part that says no form": {
		"input": {"joints": [{"path": "lines.feed.to", "here": {"form": "bead"}, "kind": "pipe"}]},
		"want": [],
	},
	"an exhaust pipe slips": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 4, "diameter": 0.05, "form": "hose"},
				"kind": "pipe",
				"there": {"path": "x", "dash": 5, "diameter": 0.06, "form": "bead"},
			}],
		},
		"want": [],
	},
	"an exhaust pipe slips the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.06, "form": "hose"},
				"kind": "pipe",
				"there": {"path": "x", "diameter": 0.05, "form": "bead"},
			}],
		},
		"want": [],
	},
	"barb of another dash": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 10, "form": "hose"},
				"kind": "line",
				"there": {"path": "oil.catch-tank.in", "dash": 12, "form": "barb"},
				"way": "clamp",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["oil.catch-tank.in"],
			"at": "here.size",
			"case": "dash",
			"figures": {"here_dash": 10, "there_dash": 12},
		}],
	},
	"barb of its own dash": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 12, "form": "hose"},
				"kind": "line",
				"there": {"path": "oil.catch-tank.in", "dash": 12, "form": "barb"},
				"way": "clamp",
			}],
		},
		"want": [],
	},
	"forms not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"dash": 8},
				"kind": "line",
				"there": {"dash": 8},
				"way": "not said",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"hose narrower": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.034, "form": "hose"},
				"kind": "line",
				"there": {"path": "cooling.radiator.out", "diameter": 0.035005, "form": "bead"},
				"way": "clamp",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["cooling.radiator.out"],
			"at": "here.size",
			"case": "diameter",
			"figures": {"here": 0.034, "there": 0.035005},
		}],
	},
	"hose narrower by as much as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.034, "form": "hose"},
				"kind": "line",
				"there": {"path": "cooling.radiator.out", "diameter": 0.035, "form": "bead"},
				"way": "clamp",
			}],
		},
		"want": [],
	},
	"hose wider": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.035005, "form": "hose"},
				"kind": "line",
				"there": {"path": "cooling.radiator.out", "diameter": 0.034, "form": "bead"},
				"way": "clamp",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"also": ["cooling.radiator.out"],
			"at": "here.size",
			"case": "diameter",
			"figures": {"here": 0.035005, "there": 0.034},
		}],
	},
	"hose wider by as much as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.035, "form": "hose"},
				"kind": "line",
				"there": {"path": "cooling.radiator.out", "diameter": 0.034, "form": "bead"},
				"way": "clamp",
			}],
		},
		"want": [],
	},
	"no line, and no more said": {
		"input": {
			"joints": [
				{
					"path": "rods.a.to",
					"here": {"form": "bead"},
					"kind": "rod",
					"there": {"path": "x", "form": "bead"},
				},
				{"path": "rods.b.to", "here": {"form": "bead"}, "kind": "rod"},
				{
					"path": "rods.c.to",
					"kind": "rod",
					"there": {"path": "x", "form": "bead"},
				},
			],
		},
		"want": [
			{"subject": "rods.a.to", "judged": false},
			{"subject": "rods.b.to", "judged": false},
			{"subject": "rods.c.to", "judged": false},
		],
	},
	"other forms, and no more said": {
		"input": {
			"joints": [
				{
					"path": "lines.a.to",
					"here": {"form": "37-flare"},
					"kind": "line",
					"there": {"path": "x", "form": "37-flare"},
					"way": "thread",
				},
				{
					"path": "lines.b.to",
					"here": {"form": "bead"},
					"kind": "line",
					"there": {"path": "x", "form": "37-flare"},
					"way": "mixed",
				},
				{
					"path": "lines.c.to",
					"here": {"form": "37-flare"},
					"kind": "line",
					"there": {"path": "x", "form": "bead"},
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
	"sizes not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"form": "hose"},
				"kind": "line",
				"there": {"path": "cooling.radiator.out", "form": "bead"},
				"way": "clamp",
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.diameter|here.dash", "there.diameter|there.dash"],
		}],
	},
	"the same the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.01, "form": "37-flare"},
				"kind": "line",
				"there": {"path": "x", "diameter": 0.02, "form": "37-flare"},
				"way": "thread",
			}],
		},
		"want": [],
	},
	"the same, the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"here": {"diameter": 0.01, "form": "hose"},
				"kind": "line",
				"there": {"path": "x", "diameter": 0.02, "form": "37-flare"},
				"way": "mixed",
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hose_fit, "joints", each.want) with input as each.input
}
