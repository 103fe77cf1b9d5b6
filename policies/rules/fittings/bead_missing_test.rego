package rules.fittings.bead_missing_test

import data.lib.cases_test as trial
import data.rules.fittings.bead_missing

cases := {
	"hose on a plain tube": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "coolant",
				"here": {"form": "hose"},
				"there": {"form": "plain-tube", "path": "cooling.heater.in"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "at": "here.form", "also": ["cooling.heater.in"]}],
	},
	"hose on a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "coolant",
				"here": {"form": "hose"},
				"there": {"form": "bead", "path": "cooling.heater.in"},
			}],
		},
		"want": [],
	},
	"plain tube into a hose": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "coolant",
				"here": {"form": "plain-tube"},
				"there": {"form": "hose", "path": "cooling.heater.in"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "at": "here.form", "also": ["cooling.heater.in"]}],
	},
	"bead into a hose": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "coolant",
				"here": {"form": "bead"},
				"there": {"form": "hose", "path": "cooling.heater.in"},
			}],
		},
		"want": [],
	},
	"plain tube into a bead": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "coolant",
				"here": {"form": "plain-tube"},
				"there": {"form": "bead", "path": "cooling.heater.in"},
			}],
		},
		"want": [],
	},
	"a breather": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "crankcase breath",
				"here": {"form": "hose"},
				"there": {"form": "plain-tube", "path": "cooling.heater.in"},
			}],
		},
		"want": [],
	},
	"a breather the other way": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "crankcase breath",
				"here": {"form": "plain-tube"},
				"there": {"form": "hose", "path": "cooling.heater.in"},
			}],
		},
		"want": [],
	},
	"forms not said": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "line", "service": "coolant"}]},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"service not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"form": "hose"},
				"there": {"form": "plain-tube", "path": "cooling.heater.in"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["service"]}],
	},
	"a rod": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "rod", "here": {"form": "rod-end"}}]},
		"want": [],
	},
	"an exhaust pipe": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"service": "coolant",
				"here": {"form": "slip"},
			}],
		},
		"want": [],
	},
	"a breather that says no more": {
		"input": {"joints": [{"path": "lines.breath.to", "kind": "line", "service": "crankcase breath"}]},
		"want": [{"subject": "lines.breath.to", "judged": false}],
	},
	"plain tube into a plain tube": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "coolant",
				"here": {"form": "plain-tube"},
				"there": {"form": "plain-tube", "path": "cooling.heater.in"},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bead_missing, "joints", each.want) with input as each.input
}
