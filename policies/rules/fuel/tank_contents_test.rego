package rules.fuel.tank_contents_test

import data.lib.cases_test as trial
import data.rules.fuel.tank_contents

cases := {
	"stronger": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E10",
				"cell": {"filled_with": "E10"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.6005},
			}],
		},
		"want": [{
			"subject": "driveline.tune",
			"at": "fuel",
			"case": "share",
			"figures": {"tank_share": 0.6005, "map_share": 0.5},
		}],
	},
	"a little stronger": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E10",
				"cell": {"filled_with": "E10"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.6},
			}],
		},
		"want": [],
	},
	"weaker": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E10",
				"cell": {"filled_with": "E10"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.6005, "tank_ethanol": 0.5},
			}],
		},
		"want": [{"subject": "driveline.tune", "case": "share"}],
	},
	"a little weaker": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E10",
				"cell": {"filled_with": "E10"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.6, "tank_ethanol": 0.5},
			}],
		},
		"want": [],
	},
	"a sensor makes up": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E85",
				"cell": {"filled_with": "E85"},
				"follows_fuel": true,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.6005},
			}],
		},
		"want": [],
	},
	"methanol in the tank": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E85",
				"cell": {"filled_with": "methanol"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.5},
			}],
		},
		"want": [{
			"subject": "driveline.tune",
			"at": "fuel",
			"case": "kind",
			"figures": {"tank": "methanol", "map": "E85"},
		}],
	},
	"map for methanol": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "methanol",
				"cell": {"filled_with": "E85"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.5},
			}],
		},
		"want": [{
			"subject": "driveline.tune",
			"at": "fuel",
			"case": "kind",
			"figures": {"tank": "E85", "map": "methanol"},
		}],
	},
	"methanol for methanol": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "methanol",
				"cell": {"filled_with": "methanol"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.5},
			}],
		},
		"want": [],
	},
	"sold under one name, both tested": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E85",
				"ethanol": 0.8,
				"cell": {"filled_with": "E85", "ethanol": 0.8},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.8, "tank_ethanol": 0.8},
			}],
		},
		"want": [],
	},
	"sold under one name, and not tested": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E85",
				"cell": {"filled_with": "E85"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.85, "tank_ethanol": 0.85},
			}],
		},
		"want": [{"subject": "driveline.tune", "missing": ["ethanol", "cell.ethanol"]}],
	},
	"of two names, and not tested": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "petrol",
				"cell": {"filled_with": "E85"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0, "tank_ethanol": 0.85},
			}],
		},
		"want": [{"subject": "driveline.tune", "case": "share"}],
	},
	"of two names that hardly differ, the other way round": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "ethanol",
				"cell": {"filled_with": "E85"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.92, "tank_ethanol": 0.85},
			}],
		},
		"want": [],
	},
	"of two names that hardly differ": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E85",
				"cell": {"filled_with": "ethanol"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.95, "tank_ethanol": 1},
			}],
		},
		"want": [],
	},
	"as it should be": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E10",
				"cell": {"filled_with": "E10"},
				"follows_fuel": false,
				"calc": {"map_ethanol": 0.5, "tank_ethanol": 0.5},
			}],
		},
		"want": [],
	},
	"not known": {
		"input": {"tunes": [{"path": "driveline.tune", "follows_fuel": false}]},
		"want": [{
			"subject": "driveline.tune",
			"missing": ["fuel", "cell.filled_with", "calc.map_ethanol", "calc.tank_ethanol"],
		}],
	},
	"not known, with a sensor": {
		"input": {"tunes": [{"path": "driveline.tune", "follows_fuel": true}]},
		"want": [{"subject": "driveline.tune", "missing": ["fuel", "cell.filled_with"]}],
	},
	"a sensor makes up between blends of petrol": {
		"input": {
			"tunes": [{
				"path": "driveline.tune",
				"fuel": "E85",
				"cell": {"filled_with": "petrol"},
				"follows_fuel": true,
			}],
		},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(tank_contents, "tunes", each.want) with input as each.input
}
