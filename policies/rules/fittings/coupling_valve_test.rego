package rules.fittings.coupling_valve_test

import data.lib.cases_test as trial
import data.rules.fittings.coupling_valve

cases := {
	"both shut": {
		"input": {
			"joints": [{
				"path": "lines.clutch.to",
				"kind": "line",
				"here": {"form": "dry-break", "valved": true},
				"there": {"path": "driveline.ports.clutch-in.end", "valved": true},
			}],
		},
		"want": [],
	},
	"this one does not": {
		"input": {
			"joints": [{
				"path": "lines.clutch.to",
				"kind": "line",
				"here": {"form": "dry-break", "valved": false},
				"there": {"path": "driveline.ports.clutch-in.end", "valved": true},
			}],
		},
		"want": [{"subject": "lines.clutch.to", "at": "here.valved"}],
	},
	"the other does not": {
		"input": {
			"joints": [{
				"path": "lines.clutch.to",
				"kind": "line",
				"here": {"form": "dry-break", "valved": true},
				"there": {"path": "driveline.ports.clutch-in.end", "valved": false},
			}],
		},
		"want": [{
			"subject": "lines.clutch.to",
			"at": "there.valved",
			"also": ["driveline.ports.clutch-in.end"],
		}],
	},
	"a push connector": {
		"input": {
			"joints": [{
				"path": "lines.clutch.to",
				"kind": "line",
				"here": {"form": "push-connector", "valved": false},
				"there": {"path": "driveline.ports.clutch-in.end", "valved": false},
			}],
		},
		"want": [{"subject": "lines.clutch.to", "judged": false}],
	},
	"form not said": {
		"input": {
			"joints": [{
				"path": "lines.clutch.to",
				"kind": "line",
				"here": {"valved": true},
				"there": {"path": "driveline.ports.clutch-in.end", "valved": true},
			}],
		},
		"want": [{"subject": "lines.clutch.to", "missing": ["here.form"]}],
	},
	"a rod": {
		"input": {
			"joints": [{
				"path": "lines.clutch.to",
				"kind": "rod",
				"here": {"valved": true},
				"there": {"path": "driveline.ports.clutch-in.end", "valved": true},
			}],
		},
		"want": [{"subject": "lines.clutch.to", "judged": false}],
	},
	"nothing said": {
		"input": {
			"joints": [{"path": "lines.clutch.to", "kind": "line", "here": {"form": "dry-break"}}],
		},
		"want": [{"subject": "lines.clutch.to", "missing": ["here.valved", "there.valved"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(coupling_valve, "joints", each.want) with input as each.input
}
