package rules.dolly.load_test

import data.lib.cases_test as trial
import data.rules.dolly.load

cases := {
	"over": {"input": {"support": [{"path": "support", "dolly": "short", "carrier": {"rated": 200}, "weighed": {"mass": 200.5}}]}, "want": [{"subject": "support", "at": "carrier.rated", "figures": {"mass": 200.5, "rated": 200, "dolly": "short"}}]},
	"at its rating": {"input": {"support": [{"path": "support", "dolly": "short", "carrier": {"rated": 200}, "weighed": {"mass": 200}}]}, "want": []},
	"no rating on it": {"input": {"support": [{"path": "support", "dolly": "short", "carrier": {"straps": 2}, "weighed": {"mass": 200.5}}]}, "want": [{"subject": "support", "missing": ["carrier.rated"]}]},
	"not weighed": {"input": {"support": [{"path": "support", "dolly": "short", "carrier": {"rated": 200}}]}, "want": [{"subject": "support", "missing": ["weighed.mass"]}]},
	"no dolly": {"input": {"support": [{"path": "support", "none": ["dolly"]}]}, "want": []},
	"dolly not said": {"input": {"support": [{"path": "support"}]}, "want": [{"subject": "support", "missing": ["dolly"]}]},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(load, "support", each.want) with input as each.input
}
