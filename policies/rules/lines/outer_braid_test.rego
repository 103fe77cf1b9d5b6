package rules.lines.outer_braid_test

import data.lib.cases_test as trial
import data.rules.lines.outer_braid

cases := {
	"rubber": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "fluorocarbon", "cover": "rubber"},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.cover",
			"figures": {"service": "fuel", "cover": "rubber"},
		}],
	},
	"braid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "fluorocarbon", "cover": "stainless-braid"},
			}],
		},
		"want": [],
	},
	"oil in fabric": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"kind": {"liner": "fluorocarbon", "cover": "fabric-ply"},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"figures": {"service": "engine oil", "cover": "fabric-ply"},
		}],
	},
	"wire-wound": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "fluorocarbon", "cover": "wire-wound"},
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.cover"}],
	},
	"a bare pipe of plastic": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "nylon", "cover": "bare"},
			}],
		},
		"want": [{"subject": "lines.feed", "at": "kind.cover"}],
	},
	"a metal pipe": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"kind": {"liner": "metal", "cover": "bare"},
			}],
		},
		"want": [{"subject": "lines.feed", "judged": false}],
	},
	"a metal pipe for who knows what": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"liner": "metal", "cover": "bare"}}]},
		"want": [{"subject": "lines.feed", "judged": false}],
	},
	"water": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "coolant",
				"kind": {"liner": "fluorocarbon", "cover": "rubber"},
			}],
		},
		"want": [{"subject": "lines.feed", "judged": false}],
	},
	"service not said": {
		"input": {
			"lines": [{"path": "lines.feed", "kind": {"liner": "fluorocarbon", "cover": "rubber"}}],
		},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"nothing said": {
		"input": {"lines": [{"path": "lines.feed"}]},
		"want": [{"subject": "lines.feed", "missing": ["service", "kind.cover"]}],
	},
	"cover not said": {
		"input": {
			"lines": [{"path": "lines.feed", "service": "fuel", "kind": {"liner": "fluorocarbon"}}],
		},
		"want": [{"subject": "lines.feed", "missing": ["kind.cover"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(outer_braid, "lines", each.want) with input as each.input
}
