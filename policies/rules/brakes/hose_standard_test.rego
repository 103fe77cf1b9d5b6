package rules.brakes.hose_standard_test

import data.lib.cases_test as trial
import data.rules.brakes.hose_standard

cases := {
	"fuel hose": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"kind": {"standard": "SAE J30 R9"},
			}],
		},
		"want": [{
			"subject": "lines.brake",
			"at": "kind.standard",
			"case": "fuel_hose",
			"figures": {"standard": "SAE J30 R9"},
		}],
	},
	"as fuel hose is often marked": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"kind": {"standard": "SAE 30R9"},
			}],
		},
		"want": [{"subject": "lines.brake", "case": "fuel_hose"}],
	},
	"brake hose": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"kind": {"standard": "SAE J1401"},
			}],
		},
		"want": [],
	},
	"unmarked": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "braid-3"},
				"kind": {"none": ["standard"]},
			}],
		},
		"want": [{
			"subject": "lines.brake",
			"at": "kind.standard",
			"case": "unmarked",
			"figures": {"kind": "braid-3"},
		}],
	},
	"marked": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "braid-3"},
				"kind": {"standard": "SAE J1401", "none": ["burst"]},
			}],
		},
		"want": [],
	},
	"unmarked, then marked": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "braid-3"},
				"kind": {"standard": "SAE J1401", "none": ["standard"]},
			}],
		},
		"want": [{"subject": "lines.brake", "case": "unmarked"}],
	},
	"not said": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "braid-3"},
			}],
		},
		"want": [{"subject": "lines.brake", "missing": ["kind.standard"]}],
	},
	"service not said": {
		"input": {"lines": [{"path": "lines.brake", "kind": {"standard": "SAE J30 R9"}}]},
		"want": [{"subject": "lines.brake", "missing": ["service"]}],
	},
	"steel pipe": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "pipe"},
				"kind": {"liner": "metal", "standard": "SAE J30 R9"},
			}],
		},
		"want": [],
	},
	"unmarked steel pipe": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "brake fluid",
				"hose": {"kind": "pipe"},
				"kind": {"liner": "metal", "none": ["standard"]},
			}],
		},
		"want": [],
	},
	"steel pipe that says no more": {
		"input": {
			"lines": [{"path": "lines.brake", "service": "brake fluid", "kind": {"liner": "metal"}}],
		},
		"want": [],
	},
	"clutch": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "clutch fluid",
				"kind": {"standard": "SAE J30 R9"},
			}],
		},
		"want": [],
	},
	"clutch, unmarked": {
		"input": {
			"lines": [{
				"path": "lines.brake",
				"service": "clutch fluid",
				"hose": {"kind": "braid-3"},
				"kind": {"none": ["standard"]},
			}],
		},
		"want": [],
	},
	"oil line that says no more": {
		"input": {"lines": [{"path": "lines.oil", "service": "engine oil"}]},
		"want": [{"subject": "lines.oil", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hose_standard, "lines", each.want) with input as each.input
}
