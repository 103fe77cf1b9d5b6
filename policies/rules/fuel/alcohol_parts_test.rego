package rules.fuel.alcohol_parts_test

import data.lib.cases_test as trial
import data.rules.fuel.alcohol_parts

cases := {
	"approved for it": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"approved_for": ["petrol", "E85"],
				"fuel": "E85",
				"name": "pump",
				"seals": "nitrile",
			}],
		},
		"want": [],
	},
	"approved for petrol": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"approved_for": ["petrol"],
				"fuel": "E85",
				"name": "pump",
				"seals": "nitrile",
			}],
		},
		"want": [{"subject": "fuel.pump", "at": "seals"}],
	},
	"approved, and seals not said": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"approved_for": ["E85"],
				"fuel": "E85",
				"name": "pump",
			}],
		},
		"want": [],
	},
	"fluorocarbon in E85": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"fuel": "E85",
				"name": "pump",
				"seals": "fluorocarbon",
			}],
		},
		"want": [],
	},
	"fuel not known": {
		"input": {"fuel_parts": [{"path": "fuel.pump", "name": "pump", "seals": "nitrile"}]},
		"want": [{"subject": "fuel.pump", "missing": ["alcohol"]}],
	},
	"nitrile in E10": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.1,
				"fuel": "E10",
				"name": "pump",
				"seals": "nitrile",
			}],
		},
		"want": [],
	},
	"nitrile in E85": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"fuel": "E85",
				"name": "pump",
				"seals": "nitrile",
			}],
		},
		"want": [{
			"subject": "fuel.pump",
			"at": "seals",
			"figures": {"fuel": "E85", "seals": "nitrile"},
		}],
	},
	"nitrile in methanol": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 1,
				"fuel": "methanol",
				"name": "pump",
				"seals": "nitrile",
			}],
		},
		"want": [{
			"subject": "fuel.pump",
			"at": "seals",
			"figures": {"fuel": "methanol", "seals": "nitrile"},
		}],
	},
	"nitrile just past the limit": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.1005,
				"fuel": "E85",
				"name": "pump",
				"seals": "nitrile",
			}],
		},
		"want": [{"subject": "fuel.pump", "at": "seals"}],
	},
	"seals not said": {
		"input": {
			"fuel_parts": [{"path": "fuel.pump", "alcohol": 0.82, "fuel": "E85", "name": "pump"}],
		},
		"want": [{"subject": "fuel.pump", "missing": ["seals"]}],
	},
	"approved for petrol, and seals not said": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"approved_for": ["petrol"],
				"fuel": "E85",
				"name": "pump",
			}],
		},
		"want": [{"subject": "fuel.pump", "missing": ["seals"]}],
	},
	"seals not said, in petrol": {
		"input": {
			"fuel_parts": [{"path": "fuel.pump", "alcohol": 0, "fuel": "petrol", "name": "pump"}],
		},
		"want": [],
	},
	"silicone is unfit": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.pump",
				"alcohol": 0.82,
				"fuel": "E85",
				"name": "pump",
				"seals": "silicone",
			}],
		},
		"want": [{
			"subject": "fuel.pump",
			"at": "seals",
			"figures": {"fuel": "E85", "seals": "silicone"},
		}],
	},
	"seals not said, at the limit": {
		"input": {
			"fuel_parts": [{"path": "fuel.pump", "name": "pump", "fuel": "E10", "alcohol": 0.1}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(alcohol_parts, "fuel_parts", each.want) with input as each.input
}
