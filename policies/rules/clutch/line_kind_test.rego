package rules.clutch.line_kind_test

import data.lib.cases_test as trial
import data.rules.clutch.line_kind

cases := {
	"oil hose": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "clutch fluid",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil"]},
			}],
		},
		"want": [{"subject": "lines.clutch", "at": "kind.for", "figures": {"kind": "oil-4"}}],
	},
	"clutch hose": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "clutch fluid",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["clutch fluid"]},
			}],
		},
		"want": [],
	},
	"brake hose": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "clutch fluid",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil", "brake fluid"]},
			}],
		},
		"want": [],
	},
	"not said": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "clutch fluid",
				"hose": {"kind": "oil-4"},
			}],
		},
		"want": [{"subject": "lines.clutch", "missing": ["kind.for"]}],
	},
	"service not said": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil"]},
			}],
		},
		"want": [{"subject": "lines.clutch", "missing": ["service"]}],
	},
	"steel pipe": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "clutch fluid",
				"hose": {"kind": "pipe"},
				"kind": {"liner": "metal", "for": ["engine oil"]},
			}],
		},
		"want": [],
	},
	"steel pipe that says no more": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "clutch fluid",
				"kind": {"liner": "metal"},
			}],
		},
		"want": [],
	},
	"oil line": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"service": "engine oil",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil"]},
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(line_kind, "lines", each.want) with input as each.input
}
