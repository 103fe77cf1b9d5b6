package rules.electrics.isolator_rating_test

import data.lib.cases_test as trial
import data.rules.electrics.isolator_rating

cases := {
	"too small for the alternator": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"steady": 100, "cranking": 500}, "engine": {"alternator": 110, "cranking": 500}}]},
		"want": [{"subject": "electrics", "at": "isolator.steady", "case": "steady", "figures": {"rated": 100, "asked": 110}}],
	},
	"too small for the starter": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"steady": 110, "cranking": 400}, "engine": {"alternator": 110, "cranking": 500}}]},
		"want": [{"subject": "electrics", "at": "isolator.cranking", "case": "cranking", "figures": {"rated": 400, "asked": 500}}],
	},
	"just large enough": {
		"input": {"electrics": [{"path": "electrics", "isolator": {"steady": 110, "cranking": 500}, "engine": {"alternator": 110, "cranking": 500}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"electrics": [{"path": "electrics"}]},
		"want": [{
			"subject": "electrics",
			"missing": ["isolator.steady", "engine.alternator", "isolator.cranking", "engine.cranking"],
		}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(isolator_rating, "electrics", each.want) with input as each.input
}
