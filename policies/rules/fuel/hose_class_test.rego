package rules.fuel.hose_class_test

import data.lib.cases_test as trial
import data.rules.fuel.hose_class

cases := {
	"carburettor hose on a rail": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
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
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R9"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"a hydraulic hose": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"kind": {"standard": "SAE 100 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"carburettors": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine"}],
		},
		"want": [],
	},
	"return to the tank": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "fuel.cell.return"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"return to the surge pot": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "fuel.surge-pot.return"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"suction": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "suction",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"suction that says no more": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "pumped_by": "suction"}]},
		"want": [],
	},
	"gravity": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "gravity",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"gravity that says no more": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "pumped_by": "gravity"}]},
		"want": [],
	},
	"engine oil": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "pumped_by": "pump"}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.standard", "to.port.name"]}],
	},
	"as hose is often marked": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"kind": {"standard": "SAE 30R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
			"engines": [{"path": "driveline.engine", "injectors": {"count": 4}}],
		},
		"want": [{"subject": "lines.feed", "figures": {"standard": "SAE 30R7"}}],
	},
	"service not said": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"standard": "SAE J30 R7"},
				"to": {"port": {"name": "driveline.fuel-in"}},
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["service"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hose_class, "lines", each.want) with input as each.input
}
