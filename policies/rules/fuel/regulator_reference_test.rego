package rules.fuel.regulator_reference_test

import data.lib.cases_test as trial
import data.rules.fuel.regulator_reference

cases := {
	"carburettors behind an injection pump": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["injectors"], "induction": "naturally aspirated"},
			"none": ["regulator"],
			"calc": {"rail_pressure": 35050},
			"tune": {"base_fuel_pressure": 25000},
		}]},
		"want": [{
			"subject": "fuel",
			"at": "regulator",
			"case": "free",
			"figures": {"base": 35050, "wanted": 25000},
		}],
	},
	"carburettors behind a pump of their own": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["injectors"], "induction": "naturally aspirated"},
			"none": ["regulator"],
			"calc": {"rail_pressure": 35000},
			"tune": {"base_fuel_pressure": 25000},
		}]},
		"want": [],
	},
	"carburettors, and the pump's valve not said": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["injectors"], "induction": "naturally aspirated"},
			"none": ["regulator"],
			"tune": {"base_fuel_pressure": 25000},
		}]},
		"want": [{"subject": "fuel", "missing": ["calc.rail_pressure"]}],
	},
	"injectors, and a pump that the computer slows down": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["boost"], "induction": "naturally aspirated"},
			"none": ["regulator"],
			"calc": {"rail_pressure": 900000},
			"tune": {"base_fuel_pressure": 400000},
		}]},
		"want": [],
	},
	"injectors, and the pump's valve not said": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["boost"], "induction": "naturally aspirated"},
			"none": ["regulator"],
			"tune": {"base_fuel_pressure": 400000},
		}]},
		"want": [],
	},
	"carburettors behind a regulator": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["injectors"], "induction": "naturally aspirated"},
			"none": ["strainer"],
			"regulator": {"base": 25000},
			"calc": {"rail_pressure": 900000},
			"tune": {"base_fuel_pressure": 25000},
		}]},
		"want": [],
	},
	"carburettors behind a regulator, and the pump's valve not said": {
		"input": {"fuel": [{
			"path": "fuel",
			"engine": {"none": ["injectors"], "induction": "naturally aspirated"},
			"none": ["strainer"],
			"regulator": {"base": 25000},
			"tune": {"base_fuel_pressure": 25000},
		}]},
		"want": [],
	},
	"base high": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 310000, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"base low": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 290000, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"base not said": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": true},
			}],
		},
		"want": [{
			"subject": "fuel",
			"missing": ["regulator.base", "tune.base_fuel_pressure"],
		}],
	},
	"base too high": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 310050, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "regulator.base",
			"case": "base",
			"figures": {"base": 310050, "wanted": 300000},
		}],
	},
	"base too low": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 289950, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{"subject": "fuel", "case": "base"}],
	},
	"boost not said": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"regulator": {"base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{
			"subject": "fuel",
			"missing": ["engine.induction", "regulator.follows_manifold"],
		}],
	},
	"fixed": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 300000, "follows_manifold": false},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "regulator.follows_manifold",
			"case": "fixed",
			"figures": {"induction": "turbocharged", "wanted": 300000},
		}],
	},
	"fixed, and no boost": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "naturally aspirated"},
				"regulator": {"base": 300000, "follows_manifold": false},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"follows": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 300000, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"naturally aspirated, and the reference not said": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "naturally aspirated"},
				"regulator": {"base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"reference not said": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{"subject": "fuel", "missing": ["regulator.follows_manifold"]}],
	},
	"map and driveline agree": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 350000, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 350000},
				"needs": {"fuel_pressure": 350000},
			}],
		},
		"want": [],
	},
	"the map knows better than the driveline": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 350000, "follows_manifold": true},
				"tune": {"base_fuel_pressure": 350000},
				"needs": {"fuel_pressure": 400000},
			}],
		},
		"want": [],
	},
	"only the driveline says": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 350000, "follows_manifold": true},
				"needs": {"fuel_pressure": 350000},
			}],
		},
		"want": [{"subject": "fuel", "missing": ["tune.base_fuel_pressure"]}],
	},
	"only the driveline says, and asks for more": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 350000, "follows_manifold": true},
				"needs": {"fuel_pressure": 400000},
			}],
		},
		"want": [{
			"subject": "fuel",
			"case": "asked",
			"at": "regulator.base",
			"figures": {"base": 350000, "wanted": 400000},
		}],
	},
	"constant rail": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 350000, "follows_manifold": false},
				"tune": {"none": ["base_fuel_pressure"]},
				"needs": {"fuel_pressure": 350000},
			}],
		},
		"want": [],
	},
	"constant rail, and nobody says of how much": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"base": 350000, "follows_manifold": false},
				"tune": {"none": ["base_fuel_pressure"]},
			}],
		},
		"want": [{"subject": "fuel", "missing": ["needs.fuel_pressure"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(regulator_reference, "fuel", each.want) with input as each.input
}
