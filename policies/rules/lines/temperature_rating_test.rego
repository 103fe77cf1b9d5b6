package rules.lines.temperature_rating_test

import data.lib.cases_test as trial
import data.rules.lines.temperature_rating

cases := {
	"hotter": {
		"input": {
			"lines": [{"path": "lines.feed", "calc": {"temperature": 409}, "kind": {"hot": 408}}],
		},
		"want": [{"subject": "lines.feed", "at": "hose", "figures": {"hot": 409, "rated": 408}}],
	},
	"as hot as it may be": {
		"input": {
			"lines": [{"path": "lines.feed", "calc": {"temperature": 408}, "kind": {"hot": 408}, "near": 330}],
		},
		"want": [],
	},
	"nobody knows what is beside it": {
		"input": {
			"lines": [{"path": "lines.feed", "calc": {"temperature": 408}, "kind": {"hot": 408}}],
		},
		"want": [{"subject": "lines.feed", "missing": ["near"]}],
	},
	"hot beside it, sleeved": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408},
				"sleeve": "heat sleeve",
				"from": {"port": {"hot": 380}},
			}],
		},
		"want": [],
	},
	"hot oil comes in": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408},
				"sleeve": "heat sleeve",
				"from": {"port": {"hot": 409}},
			}],
		},
		"want": [{"subject": "lines.feed", "at": "hose", "figures": {"hot": 409, "rated": 408}}],
	},
	"oil as hot as may be comes in": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408},
				"sleeve": "heat sleeve",
				"from": {"port": {"hot": 408}},
			}],
		},
		"want": [],
	},
	"hot oil goes out": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408},
				"sleeve": "heat sleeve",
				"to": {"port": {"hot": 409}},
			}],
		},
		"want": [{"subject": "lines.feed", "at": "hose", "figures": {"hot": 409, "rated": 408}}],
	},
	"oil as hot as may be goes out": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408},
				"sleeve": "heat sleeve",
				"to": {"port": {"hot": 408}},
			}],
		},
		"want": [],
	},
	"sleeved, and nobody knows the fluid": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408},
				"sleeve": "heat sleeve",
			}],
		},
		"want": [{"subject": "lines.feed", "missing": ["from.port.hot|to.port.hot"]}],
	},
	"not known": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"bore": 0.01}}]},
		"want": [{"subject": "lines.feed", "missing": ["kind.hot", "calc.temperature", "near"]}],
	},
	"steel pipe": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"calc": {"temperature": 409},
				"kind": {"hot": 408, "liner": "metal"},
			}],
		},
		"want": [],
	},
	"sleeved steel pipe": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"sleeve": "heat sleeve",
				"calc": {"temperature": 409},
				"kind": {"hot": 408, "liner": "metal"},
				"from": {"port": {"hot": 409}},
				"to": {"port": {"hot": 409}},
			}],
		},
		"want": [],
	},
	"steel pipe that says no more": {
		"input": {"lines": [{"path": "lines.feed", "kind": {"liner": "metal"}}]},
		"want": [],
	},
	"sleeved steel pipe that says no more": {
		"input": {
			"lines": [{"path": "lines.feed", "kind": {"liner": "metal"}, "sleeve": "heat sleeve"}],
		},
		"want": [],
	},
	"hotter beside it than in it": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"kind": {"hot": 394},
				"calc": {"temperature": 410},
				"from": {"port": {"hot": 400}},
				"to": {"port": {"hot": 402}},
			}],
		},
		"want": [{"subject": "lines.feed", "at": "hose", "figures": {"hot": 410, "rated": 394}}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(temperature_rating, "lines", each.want) with input as each.input
}
