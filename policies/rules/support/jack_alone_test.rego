package rules.support.jack_alone_test

import data.lib.cases_test as trial
import data.rules.support.jack_alone

cases := {
	"a jack": {
		"input": {"support": [{"path": "support", "stands": [], "held_by": ["Trolley jack"]}]},
		"want": [{"subject": "support", "at": "held_by", "figures": {"held": "Trolley jack"}}],
	},
	"a hoist": {
		"input": {"support": [{"path": "support", "stands": [], "held_by": ["hoist"]}]},
		"want": [{"subject": "support", "figures": {"held": "hoist"}}],
	},
	"a crane": {
		"input": {"support": [{"path": "support", "stands": [], "held_by": ["crane"]}]},
		"want": [{"subject": "support", "figures": {"held": "crane"}}],
	},
	"a lift": {
		"input": {"support": [{"path": "support", "stands": [], "held_by": ["two-post lift"]}]},
		"want": [],
	},
	"a jack beside a stand": {
		"input": {"support": [{"path": "support", "stands": [{"name": "left"}], "held_by": ["jack"]}]},
		"want": [],
	},
	"a jack and a frame": {
		"input": {"support": [{"path": "support", "stands": [], "held_by": ["jack"], "frame": "rear frame"}]},
		"want": [],
	},
	"nothing said": {
		"input": {"support": [{"path": "support"}]},
		"want": [{"subject": "support", "missing": ["stands", "held_by"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(jack_alone, "support", each.want) with input as each.input
}
