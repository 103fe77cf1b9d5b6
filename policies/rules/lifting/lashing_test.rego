package rules.lifting.lashing_test

import data.lib.cases_test as trial
import data.rules.lifting.lashing

cases := {
	"a lashing": {
		"input": {"support": [{"path": "support", "sling": "orange", "tackle": {"kind": "lashing strap"}}]},
		"want": [{"subject": "support", "at": "sling", "figures": {"sling": "orange"}}],
	},
	"a chain": {
		"input": {"support": [{"path": "support", "sling": "orange", "tackle": {"kind": "chain"}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["sling", "tackle.kind"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(lashing, "support", each.want) with input as each.input
}
