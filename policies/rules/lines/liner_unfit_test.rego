package rules.lines.liner_unfit_test

import data.lib.cases_test as trial
import data.rules.lines.liner_unfit

cases := {
	"EPDM in brake fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "glycol-brake-fluid",
				"kind": {"liner": "EPDM"},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"EPDM in mineral oil": {
		"input": {
			"lines": [{
				"path": "lines.rack",
				"fluid": "mineral-oil",
				"kind": {"liner": "EPDM"},
				"service": "steering fluid",
			}],
		},
		"want": [{"subject": "lines.rack"}],
	},
	"EPDM in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"kind": {"liner": "EPDM"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed"}],
	},
	"a vacuum hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "glycol-brake-fluid",
				"kind": {"liner": "nitrile"},
				"service": "vacuum",
			}],
		},
		"want": [],
	},
	"a vacuum hose that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "vacuum"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
	"approved by its maker for the fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "glycol-brake-fluid",
				"kind": {"for": ["clutch fluid"], "liner": "nitrile"},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"approved for something else": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "glycol-brake-fluid",
				"kind": {"for": ["engine oil"], "liner": "nitrile"},
				"service": "clutch fluid",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"chloroprene approved for E10": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e10",
				"fuel": "E10",
				"kind": {"approved_for": ["E10"], "liner": "chloroprene"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"chloroprene approved for petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e10",
				"fuel": "E10",
				"kind": {"approved_for": ["petrol"], "liner": "chloroprene"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"chloroprene in E10": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e10",
				"fuel": "E10",
				"kind": {"liner": "chloroprene"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"nitrile in brake fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "glycol-brake-fluid",
				"kind": {"liner": "nitrile"},
				"service": "clutch fluid",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.liner",
			"figures": {"fluid": "glycol-brake-fluid", "liner": "nitrile"},
		}],
	},
	"nitrile in mineral oil": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "mineral-oil",
				"kind": {"liner": "nitrile"},
				"service": "clutch fluid",
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
				"fluid": "glycol-brake-fluid",
				"kind": {"liner": "nitrile"},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"unfit from memory is left to advice": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"kind": {"liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"sold for fuel, and approved for another fuel": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fluid": "e10",
				"kind": {"liner": "chloroprene", "for": ["fuel"], "approved_for": ["diesel"]},
				"fuel": "E10",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for fuel, and nothing said of which": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fluid": "e10",
				"kind": {"liner": "chloroprene", "for": ["fuel"]},
				"fuel": "E10",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for another service than it carries": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fluid": "e10",
				"kind": {"liner": "chloroprene", "for": ["fuel vapour"]},
				"fuel": "E10",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for what it carries, and approved for a fuel besides": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "water",
				"fluid": "e10",
				"kind": {"liner": "chloroprene", "for": ["water"], "approved_for": ["diesel"]},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(liner_unfit, "lines", each.want) with input as each.input
}
