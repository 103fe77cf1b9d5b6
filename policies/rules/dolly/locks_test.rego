package rules.dolly.locks_test

import data.lib.cases_test as trial
import data.rules.dolly.locks

cases := {
	"one": {"input": {"support": [{"path": "support", "dolly": "short", "locking": 1}]}, "want": [{"subject": "support", "at": "dolly", "figures": {"dolly": "short", "locking": 1, "least": 2}}]},
	"two": {"input": {"support": [{"path": "support", "dolly": "short", "locking": 2}]}, "want": []},
	"one does not say": {"input": {"support": [{"path": "support", "dolly": "short"}]}, "want": [{"subject": "support", "missing": ["locking"]}]},
	"no dolly": {"input": {"support": [{"path": "support", "none": ["dolly"]}]}, "want": []},
	"dolly not said": {"input": {"support": [{"path": "support"}]}, "want": [{"subject": "support", "missing": ["dolly"]}]},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(locks, "support", each.want) with input as each.input
}
