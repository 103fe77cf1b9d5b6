package rules.electrics.isolator_rating_test

import data.lib.cases_test as trial
import data.rules.electrics.isolator_rating

cases := {
	"just large enough": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"engine": {"cranking": 500},
				"isolator": {"cranking": 500, "steady": 110},
				"calc": {"isolated": 110},
			}],
		},
		"want": [],
	},
	"nothing said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{
			"subject": "electrics",
			"missing": ["isolator.steady", "calc.isolated", "isolator.cranking", "engine.cranking"],
		}],
	},
	"too small for the alternator": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"engine": {"cranking": 500},
				"isolator": {"cranking": 500, "steady": 100},
				"calc": {"isolated": 110},
			}],
		},
		"want": [{
			"subject": "electrics",
			"at": "isolator.steady",
			"case": "steady",
			"figures": {"asked": 110, "rated": 100},
		}],
	},
	"too small for the starter": {
		"input": {
			"electrics": [{
				"path": "electrics",
				"engine": {"cranking": 500},
				"isolator": {"cranking": 400, "steady": 110},
				"calc": {"isolated": 110},
			}],
		},
		"want": [{
			"subject": "electrics",
			"at": "isolator.cranking",
			"case": "cranking",
			"figures": {"asked": 500, "rated": 400},
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(isolator_rating, "electrics", each.want) with input as each.input
}
