package rules.fuel.alcohol_parts_test

import data.lib.cases_test as trial
import data.rules.fuel.alcohol_parts

cases := {
	"nitrile in the pump": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "nitrile"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "pump.seals",
			"case": "pump",
			"figures": {"seals": "nitrile", "fuel": "E85"},
		}],
	},
	"nitrile in the pump, at the limit": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "nitrile"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.1},
			}],
		},
		"want": [],
	},
	"fluorocarbon instead in the pump": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [],
	},
	"pump approved": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "nitrile", "approved_for": ["E85"]},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [],
	},
	"pump approved for petrol": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "nitrile", "approved_for": ["petrol"]},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{"subject": "fuel", "case": "pump"}],
	},
	"nitrile in the filter": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "nitrile"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "filter.seals",
			"case": "filter",
			"figures": {"seals": "nitrile", "fuel": "E85"},
		}],
	},
	"nitrile in the filter, at the limit": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "nitrile"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.1},
			}],
		},
		"want": [],
	},
	"fluorocarbon instead in the filter": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [],
	},
	"filter approved": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "nitrile", "approved_for": ["E85"]},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [],
	},
	"filter approved for petrol": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "nitrile", "approved_for": ["petrol"]},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{"subject": "fuel", "case": "filter"}],
	},
	"nitrile in the regulator": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "nitrile"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "regulator.seals",
			"case": "regulator",
			"figures": {"seals": "nitrile", "fuel": "E85"},
		}],
	},
	"nitrile in the regulator, at the limit": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "nitrile"},
				"calc": {"alcohol": 0.1},
			}],
		},
		"want": [],
	},
	"fluorocarbon instead in the regulator": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [],
	},
	"regulator approved": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "nitrile", "approved_for": ["E85"]},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [],
	},
	"regulator approved for petrol": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "fluorocarbon"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "nitrile", "approved_for": ["petrol"]},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{"subject": "fuel", "case": "regulator"}],
	},
	"silicone is unfit": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"filled_with": "E85"},
				"pump": {"seals": "silicone"},
				"filter": {"seals": "fluorocarbon"},
				"regulator": {"seals": "fluorocarbon"},
				"calc": {"alcohol": 0.101},
			}],
		},
		"want": [{"subject": "fuel", "case": "pump"}],
	},
	"parts not said": {
		"input": {
			"fuel": [{"path": "fuel", "calc": {"alcohol": 0.101}, "cell": {"filled_with": "E85"}}],
		},
		"want": [{
			"subject": "fuel",
			"missing": [
				"pump.seals|pump.approved_for",
				"filter.seals|filter.approved_for",
				"regulator.seals|regulator.approved_for",
			],
		}],
	},
	"fuel not known": {
		"input": {"fuel": [{"path": "fuel", "pump": {"seals": "nitrile"}}]},
		"want": [{"subject": "fuel", "missing": ["calc.alcohol"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(alcohol_parts, "fuel", each.want) with input as each.input
}
