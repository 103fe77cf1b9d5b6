package rules.oil.catch_volume_test

import data.lib.cases_test as trial
import data.rules.oil.catch_volume

cases := {
	"too small": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "naturally aspirated"},
				"calc": {"displacement": 0.002},
				"catch_tank": {"holds": 0.00199, "level_visible": true},
			}],
		},
		"want": [{
			"subject": "oil",
			"at": "catch_tank.holds",
			"case": "volume",
			"figures": {"holds": 0.00199, "least": 0.002},
		}],
	},
	"two litres for two litres": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "naturally aspirated"},
				"calc": {"displacement": 0.002},
				"catch_tank": {"holds": 0.002, "level_visible": true},
			}],
		},
		"want": [],
	},
	"two litres for more": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "naturally aspirated"},
				"calc": {"displacement": 0.00201},
				"catch_tank": {"holds": 0.002, "level_visible": true},
			}],
		},
		"want": [{
			"subject": "oil",
			"at": "catch_tank.holds",
			"case": "volume",
			"figures": {"holds": 0.002, "least": 0.003},
		}],
	},
	"three litres for more": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "naturally aspirated"},
				"calc": {"displacement": 0.00201},
				"catch_tank": {"holds": 0.003, "level_visible": true},
			}],
		},
		"want": [],
	},
	"boosted": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "turbocharged"},
				"calc": {"displacement": 0.002},
				"catch_tank": {"holds": 0.00299, "level_visible": true},
			}],
		},
		"want": [{"subject": "oil", "case": "volume", "figures": {"holds": 0.00299, "least": 0.003}}],
	},
	"boosted, three litres": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "turbocharged"},
				"calc": {"displacement": 0.002},
				"catch_tank": {"holds": 0.003, "level_visible": true},
			}],
		},
		"want": [],
	},
	"level out of sight": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "open", "induction": "naturally aspirated"},
				"calc": {"displacement": 0.002},
				"catch_tank": {"holds": 0.002, "level_visible": false},
			}],
		},
		"want": [{
			"subject": "oil",
			"at": "catch_tank.level_visible",
			"case": "level",
			"figures": {},
		}],
	},
	"closed breather": {
		"input": {
			"oil": [{
				"path": "oil",
				"engine": {"breather": "closed", "induction": "naturally aspirated"},
				"calc": {"displacement": 0.002},
				"catch_tank": {"holds": 0.0001, "level_visible": false},
			}],
		},
		"want": [],
	},
	"closed breather, nothing more": {
		"input": {"oil": [{"path": "oil", "engine": {"breather": "closed"}}]},
		"want": [],
	},
	"not known": {
		"input": {"oil": [{"path": "oil", "engine": {"breather": "open"}}]},
		"want": [{
			"subject": "oil",
			"missing": [
				"catch_tank.holds",
				"catch_tank.level_visible",
				"calc.displacement",
				"engine.induction",
			],
		}],
	},
	"breather not said": {
		"input": {"oil": [{"path": "oil", "catch_tank": {"holds": 0.002}}]},
		"want": [{"subject": "oil", "missing": ["engine.breather"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(catch_volume, "oil", each.want) with input as each.input
}
