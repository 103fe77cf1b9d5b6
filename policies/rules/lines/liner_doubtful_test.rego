package rules.lines.liner_doubtful_test

import data.lib.cases_test as trial
import data.rules.lines.liner_doubtful

cases := {
	"nitrile in E85": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "nitrile"},
				"fluid": "e85",
				"fuel": "E85",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.liner",
			"figures": {"liner": "nitrile", "fluid": "e85", "verdict": "limited"},
		}],
	},
	"nitrile in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "nitrile"},
				"fluid": "petrol",
				"fuel": "E85",
			}],
		},
		"want": [],
	},
	"PTFE in E85": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "PTFE"},
				"fluid": "e85",
				"fuel": "E85",
			}],
		},
		"want": [],
	},
	"approved for it": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "nitrile", "approved_for": ["E85"]},
				"fluid": "e85",
				"fuel": "E85",
			}],
		},
		"want": [],
	},
	"approved for petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "nitrile", "approved_for": ["petrol"]},
				"fluid": "e85",
				"fuel": "E85",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"sold for it": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "coolant",
				"kind": {"liner": "fluorocarbon", "for": ["coolant"]},
				"fluid": "coolant",
			}],
		},
		"want": [],
	},
	"sold for oil": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "coolant",
				"kind": {"liner": "fluorocarbon", "for": ["engine oil"]},
				"fluid": "coolant",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"unfit, from memory": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone"},
				"fluid": "petrol",
				"fuel": "petrol",
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.liner",
			"figures": {"liner": "silicone", "fluid": "petrol", "verdict": "unfit"},
		}],
	},
	"silicone in methanol is limited": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone"},
				"fluid": "methanol",
				"fuel": "petrol",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"silicone in air": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone"},
				"fluid": "hot-air",
				"fuel": "petrol",
			}],
		},
		"want": [],
	},
	"silicone approved for petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone", "approved_for": ["petrol"]},
				"fluid": "petrol",
				"fuel": "petrol",
			}],
		},
		"want": [],
	},
	"silicone sold for fuel": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone", "for": ["fuel"]},
				"fluid": "petrol",
				"fuel": "petrol",
			}],
		},
		"want": [],
	},
	"silicone approved for diesel": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone", "approved_for": ["diesel"]},
				"fluid": "petrol",
				"fuel": "petrol",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"silicone sold for coolant": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "silicone", "for": ["coolant"]},
				"fluid": "petrol",
				"fuel": "petrol",
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.liner"}],
	},
	"a silicone vacuum hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "vacuum",
				"kind": {"liner": "silicone"},
				"fluid": "petrol",
			}],
		},
		"want": [],
	},
	"unfit, published: a fault elsewhere": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "clutch fluid",
				"kind": {"liner": "nitrile"},
				"fluid": "glycol-brake-fluid",
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.liner", "fluid"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"liner": "nitrile"}, "fluid": "e85"}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"a vacuum hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "vacuum",
				"kind": {"liner": "nitrile"},
				"fluid": "e85",
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(liner_doubtful, "lines", each.want) with input as each.input
}
