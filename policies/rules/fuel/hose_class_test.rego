package rules.fuel.hose_class_test

import data.lib.cases_test as trial
import data.rules.fuel.hose_class

cases := {
	"carburettor hose on a rail": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"injected": true,
				"kind": {"standard": "SAE J30 R7"},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "kind.standard",
			"figures": {"standard": "SAE J30 R7"},
		}],
	},
	"injection hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"injected": true,
				"kind": {"standard": "SAE J30 R9"},
			}],
		},
		"want": [],
	},
	"carburettors, suction or return": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"injected": false,
				"kind": {"standard": "SAE J30 R7"},
			}],
		},
		"want": [],
	},
	"engine oil": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"injected": false,
				"kind": {"standard": "SAE J30 R7"},
			}],
		},
		"want": [{"subject": "lines.feed", "judged": false}],
	},
	"not known whether there are injectors": {
		"input": {
			"lines": [{"path": "lines.feed", "service": "fuel", "kind": {"standard": "SAE J30 R7"}}],
		},
		"want": [{"subject": "lines.feed", "missing": ["injected"]}],
	},
	"nothing said": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.standard", "injected"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"standard": "SAE J30 R7"}}]},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
	"service and hose not said": {
		"input": {"lines": [{"path": "lines.feed"}]},
		"want": [{"subject": "lines.feed", "missing": ["service", "kind.standard"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hose_class, "lines", each.want) with input as each.input
}
