package rules.fuel.regulator_reference_test

import data.lib.cases_test as trial
import data.rules.fuel.regulator_reference

cases := {
	"fixed": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": false, "base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "regulator.follows_manifold",
			"case": "fixed",
			"figures": {"induction": "turbocharged"},
		}],
	},
	"follows": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": true, "base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"fixed, and no boost": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "naturally aspirated"},
				"regulator": {"follows_manifold": false, "base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"base too high": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": true, "base": 310050},
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
	"base high": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": true, "base": 310000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [],
	},
	"base too low": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": true, "base": 289950},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{"subject": "fuel", "case": "base"}],
	},
	"base low": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"engine": {"induction": "turbocharged"},
				"regulator": {"follows_manifold": true, "base": 290000},
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
		"want": [{"subject": "fuel", "missing": ["regulator.base", "tune.base_fuel_pressure"]}],
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
	"boost not said": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"regulator": {"base": 300000},
				"tune": {"base_fuel_pressure": 300000},
			}],
		},
		"want": [{"subject": "fuel", "missing": ["engine.induction", "regulator.follows_manifold"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(regulator_reference, "fuel", each.want) with input as each.input
}
