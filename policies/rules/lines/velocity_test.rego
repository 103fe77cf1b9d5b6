package rules.lines.velocity_test

import data.lib.cases_test as trial
import data.rules.lines.velocity

cases := {
	"fuel pump starved": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "suction",
				"calc": {"velocity_most": 1.22},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "hose",
			"case": "suction",
			"figures": {"velocity": 1.22, "usual": 1.2192},
		}],
	},
	"as fast as may be": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "suction",
				"calc": {"velocity_most": 1.2192},
			}],
		},
		"want": [],
	},
	"fuel feed": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"pumped_by": "pump",
				"calc": {"velocity_most": 9.2},
			}],
		},
		"want": [],
	},
	"oil too fast": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"calc": {"velocity_most": 9.2},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "hose",
			"case": "pressure",
			"figures": {"velocity": 9.2, "usual": 9.144},
		}],
	},
	"oil as fast as may be": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "pump",
				"calc": {"velocity_most": 9.144},
			}],
		},
		"want": [],
	},
	"oil suction is no case here": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "engine oil",
				"pumped_by": "suction",
				"calc": {"velocity_most": 9.2},
			}],
		},
		"want": [],
	},
	"coolant": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "coolant",
				"pumped_by": "pump",
				"calc": {"velocity_most": 9.2},
			}],
		},
		"want": [],
	},
	"coolant on its suction side": {
		"input": {"lines": [{"path": "lines.feed", "service": "coolant", "pumped_by": "suction"}]},
		"want": [],
	},
	"fuel feed that nobody reckoned": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "pumped_by": "pump"}]},
		"want": [],
	},
	"flow not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "pumped_by": "suction"}]},
		"want": [{"subject": "lines.feed", "missing": ["calc.velocity_most"]}],
	},
	"oil flow not known": {
		"input": {"lines": [{"path": "lines.feed", "service": "engine oil", "pumped_by": "pump"}]},
		"want": [{"subject": "lines.feed", "missing": ["calc.velocity_most"]}],
	},
	"not known what moves it": {
		"input": {"lines": [{"path": "lines.feed", "service": "coolant", "calc": {"velocity_most": 1}}]},
		"want": [{"subject": "lines.feed", "missing": ["pumped_by"]}],
	},
	"neither known": {
		"input": {"lines": [{"path": "lines.feed", "clips": 0.1}]},
		"want": [{"subject": "lines.feed", "missing": ["service", "pumped_by", "calc.velocity_most"]}],
	},
	"oil suction that says no more": {
		"input": {"lines": [{"path": "lines.other", "service": "engine oil", "pumped_by": "suction"}]},
		"want": [{"subject": "lines.other", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(velocity, "lines", each.want) with input as each.input
}
