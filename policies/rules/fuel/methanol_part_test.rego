package rules.fuel.methanol_part_test

import data.lib.cases_test as trial
import data.rules.fuel.methanol_part

cases := {
	"a bare tank": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "methanol", "metal": "aluminium"}]},
		"want": [{"subject": "fuel.cell", "at": "metal", "figures": {"metal": "aluminium"}}],
	},
	"a cast pump": {
		"input": {"fuel_parts": [{"path": "fuel.pump", "fuel": "methanol", "metal": "cast-aluminium", "approved_for": ["petrol"]}]},
		"want": [{"subject": "fuel.pump", "at": "metal", "figures": {"metal": "cast-aluminium"}}],
	},
	"a cast pump that its maker approves": {
		"input": {"fuel_parts": [{"path": "fuel.pump", "fuel": "methanol", "metal": "cast-aluminium", "approved_for": ["methanol"]}]},
		"want": [],
	},
	"an anodised tank": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "methanol", "metal": "anodised-aluminium"}]},
		"want": [],
	},
	"a bare tank of petrol": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "petrol", "metal": "aluminium"}]},
		"want": [],
	},
	"metal not said": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "methanol"}]},
		"want": [{"subject": "fuel.cell", "missing": ["metal"]}],
	},
	"metal not said, and approved": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "methanol", "approved_for": ["methanol"]}]},
		"want": [],
	},
	"metal not said, and approved for petrol": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "methanol", "approved_for": ["petrol"]}]},
		"want": [{"subject": "fuel.cell", "missing": ["metal"]}],
	},
	"metal not said, and petrol": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "fuel": "petrol"}]},
		"want": [],
	},
	"fuel not said": {
		"input": {"fuel_parts": [{"path": "fuel.cell", "metal": "aluminium"}]},
		"want": [{"subject": "fuel.cell", "missing": ["fuel"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(methanol_part, "fuel_parts", each.want) with input as each.input
}
