package rules.lines.bend_radius_test

import data.lib.cases_test as trial
import data.rules.lines.bend_radius

cases := {
	"tighter than the hose allows": {
		"input": {"lines": [{"path": "lines.feed", "tightest_bend": 0.101, "kind": {"bend": 0.102}}]},
		"want": [{
			"subject": "lines.feed",
			"at": "tightest_bend",
			"figures": {"radius": 0.101, "least": 0.102},
		}],
	},
	"as tight as the hose allows": {
		"input": {"lines": [{"path": "lines.feed", "tightest_bend": 0.102, "kind": {"bend": 0.102}}]},
		"want": [],
	},
	"bend not measured": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"bend": 0.102}, "asked": ["tightest_bend"]}]},
		"want": [{"subject": "lines.feed", "missing": ["tightest_bend"]}],
	},
	"hose that says nothing": {
		"input": {"lines": [{"path": "lines.feed", "tightest_bend": 0.102, "kind": {"bore": 0.01}}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.bend"]}],
	},
	"a pipe that has no bend": {
		"input": {"lines": [{"path": "lines.boost", "kind": {"none": ["bend"]}, "none": ["tightest_bend"]}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(bend_radius, "lines", each.want) with input as each.input
}
