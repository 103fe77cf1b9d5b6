package rules.coolant.heat_shed_test

import data.lib.cases_test as trial
import data.rules.coolant.heat_shed

cases := {
	"radiator as large as asked": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "radiator",
				"sheds": 80000,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [],
	},
	"radiator too small": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "radiator",
				"sheds": 79000,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [{
			"subject": "cooling.radiator",
			"at": "sheds",
			"figures": {"cooler": "radiator", "sheds": 79000, "heat": 80000},
		}],
	},
	"oil cooler as large as asked": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "oil cooler",
				"sheds": 20000,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [],
	},
	"oil cooler too small": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "oil cooler",
				"sheds": 19000,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [{
			"subject": "cooling.radiator",
			"figures": {"cooler": "oil cooler", "sheds": 19000, "heat": 20000},
		}],
	},
	"gearbox cooler as large as asked": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "gearbox cooler",
				"sheds": 5000,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [],
	},
	"gearbox cooler too small": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "gearbox cooler",
				"sheds": 4000,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [{
			"subject": "cooling.radiator",
			"figures": {"cooler": "gearbox cooler", "sheds": 4000, "heat": 5000},
		}],
	},
	"another cooler": {
		"input": {
			"coolers": [{
				"path": "cooling.radiator",
				"kind": "intercooler",
				"sheds": 0,
				"needs": {"heat_coolant": 80000, "heat_oil": 20000, "heat_gearbox": 5000},
			}],
		},
		"want": [{"subject": "cooling.radiator", "judged": false}],
	},
	"radiator, nothing said": {
		"input": {"coolers": [{"path": "cooling.radiator", "kind": "radiator"}]},
		"want": [{"subject": "cooling.radiator", "missing": ["needs.heat_coolant", "sheds"]}],
	},
	"oil cooler, nothing said": {
		"input": {"coolers": [{"path": "cooling.radiator", "kind": "oil cooler"}]},
		"want": [{"subject": "cooling.radiator", "missing": ["needs.heat_oil", "sheds"]}],
	},
	"gearbox cooler, nothing said": {
		"input": {"coolers": [{"path": "cooling.radiator", "kind": "gearbox cooler"}]},
		"want": [{"subject": "cooling.radiator", "missing": ["needs.heat_gearbox", "sheds"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(heat_shed, "coolers", each.want) with input as each.input
}
