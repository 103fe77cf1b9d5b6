package rules.oil.hose_class_test

import data.lib.cases_test as trial
import data.rules.oil.hose_class

cases := {
	"fuel hose": {
		"input": {
			"lines": [{
				"path": "lines.oil-feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R6"},
			}],
		},
		"want": [{
			"subject": "lines.oil-feed",
			"at": "kind.standard",
			"figures": {"standard": "SAE J30 R6"},
		}],
	},
	"as hose is often marked": {
		"input": {
			"lines": [{
				"path": "lines.oil-feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"kind": {"standard": "SAE 30R6"},
			}],
		},
		"want": [{"subject": "lines.oil-feed", "figures": {"standard": "SAE 30R6"}}],
	},
	"hydraulic hose": {
		"input": {
			"lines": [{
				"path": "lines.oil-feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"kind": {"standard": "SAE 100 R6"},
			}],
		},
		"want": [],
	},
	"another type": {
		"input": {
			"lines": [{
				"path": "lines.oil-feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R2"},
			}],
		},
		"want": [],
	},
	"a drain": {
		"input": {
			"lines": [{
				"path": "lines.oil-feed",
				"service": "engine oil",
				"pumped_by": "gravity",
				"kind": {"standard": "SAE J30 R6"},
			}],
		},
		"want": [],
	},
	"a drain that says no more": {
		"input": {
			"lines": [{"path": "lines.oil-feed", "service": "engine oil", "pumped_by": "gravity"}],
		},
		"want": [],
	},
	"not said": {
		"input": {
			"lines": [{"path": "lines.oil-feed", "service": "engine oil", "pumped_by": "pump"}],
		},
		"want": [{"subject": "lines.oil-feed", "missing": ["kind.standard"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.oil-feed", "kind": {"standard": "SAE J30 R6"}}]},
		"want": [{"subject": "lines.oil-feed", "missing": ["service"]}],
	},
	"fuel": {
		"input": {
			"lines": [{
				"path": "lines.oil-feed",
				"service": "fuel",
				"kind": {"standard": "SAE J30 R6"},
			}],
		},
		"want": [],
	},
	"fuel that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "fuel"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hose_class, "lines", each.want) with input as each.input
}
