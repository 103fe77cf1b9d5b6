package rules.lines.liner_doubtful_test

import data.lib.cases_test as trial
import data.rules.lines.liner_doubtful

cases := {
	"PTFE in E85": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e85",
				"fuel": "E85",
				"kind": {"liner": "PTFE"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"a silicone vacuum hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"kind": {"liner": "silicone"},
				"service": "vacuum",
			}],
		},
		"want": [],
	},
	"a vacuum hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e85",
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
	"approved for it": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e85",
				"fuel": "E85",
				"kind": {"approved_for": ["E85"], "liner": "nitrile"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"approved for petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e85",
				"fuel": "E85",
				"kind": {"approved_for": ["petrol"], "liner": "nitrile"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"nitrile in E85": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "e85",
				"fuel": "E85",
				"kind": {"liner": "nitrile"},
				"service": "fuel",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.liner",
			"figures": {"fluid": "e85", "liner": "nitrile", "verdict": "limited"},
		}],
	},
	"nitrile in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"fuel": "E85",
				"kind": {"liner": "nitrile"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.liner", "fluid"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "fluid": "e85", "kind": {"liner": "nitrile"}}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"silicone approved for diesel": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"fuel": "petrol",
				"kind": {"approved_for": ["diesel"], "liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"silicone approved for petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"fuel": "petrol",
				"kind": {"approved_for": ["petrol"], "liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"silicone in air": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "hot-air",
				"fuel": "petrol",
				"kind": {"liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [],
	},
	"silicone in methanol is limited": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "methanol",
				"fuel": "petrol",
				"kind": {"liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"silicone sold for coolant": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"fuel": "petrol",
				"kind": {"for": ["coolant"], "liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"silicone sold for fuel": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"fuel": "petrol",
				"kind": {"for": ["fuel"], "liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for it": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "coolant",
				"kind": {"for": ["coolant"], "liner": "fluorocarbon"},
				"service": "coolant",
			}],
		},
		"want": [],
	},
	"sold for oil": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "coolant",
				"kind": {"for": ["engine oil"], "liner": "fluorocarbon"},
				"service": "coolant",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"unfit, from memory": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "petrol",
				"fuel": "petrol",
				"kind": {"liner": "silicone"},
				"service": "fuel",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.liner",
			"figures": {"fluid": "petrol", "liner": "silicone", "verdict": "unfit"},
		}],
	},
	"unfit, published: a fault elsewhere": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"fluid": "glycol-brake-fluid",
				"kind": {"liner": "nitrile"},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"sold for fuel, and approved for another fuel": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fluid": "e85",
				"kind": {"liner": "nitrile", "for": ["fuel"], "approved_for": ["diesel"]},
				"fuel": "E85",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for fuel, and nothing said of which": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fluid": "e85",
				"kind": {"liner": "nitrile", "for": ["fuel"]},
				"fuel": "E85",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for another service than it carries": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fluid": "e85",
				"kind": {"liner": "nitrile", "for": ["fuel vapour"]},
				"fuel": "E85",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for what it carries, and approved for a fuel besides": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "water",
				"fluid": "e85",
				"kind": {"liner": "nitrile", "for": ["water"], "approved_for": ["diesel"]},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(liner_doubtful, "lines", each.want) with input as each.input
}
