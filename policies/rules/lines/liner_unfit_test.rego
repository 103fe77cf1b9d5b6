package rules.lines.liner_unfit_test

import data.lib.cases_test as trial
import data.rules.lines.liner_unfit

cases := {
	"nitrile in brake fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "clutch fluid",
				"kind": {"liner": "nitrile"},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.liner",
			"figures": {"liner": "nitrile", "fluid": "glycol-brake-fluid"},
		}],
	},
	"nitrile in mineral oil": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "clutch fluid",
				"kind": {"liner": "nitrile"},
				"fluid": "mineral-oil",
			}],
		},
		"want": [],
	},
	"EPDM in brake fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "clutch fluid",
				"kind": {"liner": "EPDM"},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [],
	},
	"approved by its maker for the fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "clutch fluid",
				"kind": {"liner": "nitrile", "for": ["clutch fluid"]},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [],
	},
	"approved for something else": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "clutch fluid",
				"kind": {"liner": "nitrile", "for": ["engine oil"]},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"chloroprene in E10": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "chloroprene"},
				"fluid": "e10",
				"fuel": "E10",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"chloroprene approved for E10": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "chloroprene", "approved_for": ["E10"]},
				"fluid": "e10",
				"fuel": "E10",
			}],
		},
		"want": [],
	},
	"chloroprene approved for petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "chloroprene", "approved_for": ["petrol"]},
				"fluid": "e10",
				"fuel": "E10",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"unfit from memory is left to advice": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone"},
				"fluid": "petrol",
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.liner", "fluid"]}],
	},
	"service not said": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"liner": "nitrile"},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"a vacuum hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "vacuum",
				"kind": {"liner": "nitrile"},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(liner_unfit, "lines", each.want) with input as each.input
}
