package rules.dolly.castor_load_test

import data.lib.cases_test as trial
import data.rules.dolly.castor_load

cases := {
	"at its rating": {
		"input": {
			"castors": [{
				"path": "shop.dollies.long.castors.front-left",
				"rated": 100,
				"calc": {"load": 80, "rocking": 100},
			}],
		},
		"want": [],
	},
	"over it on an uneven floor": {
		"input": {
			"castors": [{
				"path": "shop.dollies.long.castors.front-left",
				"rated": 100,
				"calc": {"load": 80, "rocking": 101},
			}],
		},
		"want": [{
			"subject": "shop.dollies.long.castors.front-left",
			"case": "uneven",
			"at": "rated",
			"figures": {"load": 101, "rated": 100},
		}],
	},
	"full on a flat floor, over on an uneven one": {
		"input": {
			"castors": [{
				"path": "shop.dollies.long.castors.front-left",
				"rated": 100,
				"calc": {"load": 100, "rocking": 150},
			}],
		},
		"want": [{
			"subject": "shop.dollies.long.castors.front-left",
			"case": "uneven",
			"figures": {"load": 150, "rated": 100},
		}],
	},
	"full on a flat floor": {
		"input": {
			"castors": [{
				"path": "shop.dollies.long.castors.front-left",
				"rated": 100,
				"calc": {"load": 100, "rocking": 100},
			}],
		},
		"want": [],
	},
	"over it on a flat floor": {
		"input": {
			"castors": [{
				"path": "shop.dollies.long.castors.front-left",
				"rated": 100,
				"calc": {"load": 101, "rocking": 150},
			}],
		},
		"want": [{
			"subject": "shop.dollies.long.castors.front-left",
			"case": "flat",
			"at": "rated",
			"figures": {"load": 101, "rated": 100},
		}],
	},
	"over it on a flat floor, and no more when it rocks": {
		"input": {
			"castors": [{
				"path": "shop.dollies.long.castors.front-left",
				"rated": 100,
				"calc": {"load": 101, "rocking": 100},
			}],
		},
		"want": [{"subject": "shop.dollies.long.castors.front-left", "case": "flat"}],
	},
	"nothing said": {
		"input": {"castors": [{"path": "shop.dollies.long.castors.front-left"}]},
		"want": [{
			"subject": "shop.dollies.long.castors.front-left",
			"missing": ["rated", "calc.load", "calc.rocking"],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(castor_load, "castors", each.want) with input as each.input
}
