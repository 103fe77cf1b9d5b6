package rules.clutch.line_kind_test

import data.lib.cases_test as trial
import data.rules.clutch.line_kind

cases := {
	"brake hose": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil", "brake fluid"]},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"clutch hose": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["clutch fluid"]},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"not said": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"hose": {"kind": "oil-4"},
				"service": "clutch fluid",
			}],
		},
		"want": [{"subject": "lines.clutch", "missing": ["kind.for"]}],
	},
	"oil hose": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil"]},
				"service": "clutch fluid",
			}],
		},
		"want": [{
			"subject": "lines.clutch",
			"at": "kind.for",
			"figures": {"kind": "oil-4", "service": "clutch fluid"},
		}],
	},
	"oil line": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"hose": {"kind": "oil-4"},
				"kind": {"for": ["engine oil"]},
				"service": "engine oil",
			}],
		},
		"want": [],
	},
	"oil line that says no more": {
		"input": {"lines": [{"path": "lines.oil", "service": "engine oil"}]},
		"want": [{"subject": "lines.oil", "judged": false}],
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
				"hose": {"kind": "pipe"},
				"kind": {"for": ["engine oil"], "liner": "metal"},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"steel pipe that says no more": {
		"input": {
			"lines": [{
				"path": "lines.clutch",
				"kind": {"liner": "metal"},
				"service": "clutch fluid",
			}],
		},
		"want": [],
	},
	"brake hose on a brake": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "ptfe-4"},
				"kind": {"liner": "PTFE", "for": ["brake fluid"]},
			}],
		},
		"want": [{"subject": "lines.brake", "judged": true}],
	},
	"clutch hose on a brake": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "ptfe-4"},
				"kind": {"liner": "PTFE", "for": ["clutch fluid"]},
			}],
		},
		"want": [{
			"subject": "lines.brake",
			"at": "kind.for",
			"figures": {"kind": "ptfe-4", "service": "brake fluid"},
		}],
	},
	"brake hose of which nothing is said": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "ptfe-4"},
				"kind": {"liner": "PTFE"},
			}],
		},
		"want": [{"subject": "lines.brake", "missing": ["kind.for"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(line_kind, "lines", each.want) with input as each.input
}
