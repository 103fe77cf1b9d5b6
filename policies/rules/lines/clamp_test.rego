package rules.lines.clamp_test

import data.lib.cases_test as trial
import data.rules.lines.clamp

cases := {
	"none, then one": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "hose"}},
				"to": {"half": {"form": "hose"}},
				"clamped_by": "worm",
				"none": ["clamped_by"],
			}],
		},
		"want": [{"subject": "lines.water", "at": "clamps"}],
	},
	"none": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "hose"}},
				"to": {"half": {"form": "hose"}},
				"none": ["clamped_by"],
			}],
		},
		"want": [{"subject": "lines.water", "at": "clamps"}],
	},
	"clamped": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "hose"}},
				"to": {"half": {"form": "hose"}},
				"clamped_by": "worm",
			}],
		},
		"want": [],
	},
	"clamped, and no clips": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "hose"}},
				"to": {"half": {"form": "hose"}},
				"clamped_by": "worm",
				"none": ["clips"],
			}],
		},
		"want": [],
	},
	"a hose at its beginning only": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "hose"}},
				"to": {"half": {"form": "37-flare"}},
				"clamped_by": "worm",
				"none": ["clamped_by"],
			}],
		},
		"want": [{"subject": "lines.water", "at": "clamps"}],
	},
	"a hose at its end only": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "37-flare"}},
				"to": {"half": {"form": "hose"}},
				"clamped_by": "worm",
				"none": ["clamped_by"],
			}],
		},
		"want": [{"subject": "lines.water", "at": "clamps"}],
	},
	"flares at both ends": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "37-flare"}},
				"to": {"half": {"form": "37-flare"}},
				"clamped_by": "worm",
				"none": ["clamped_by"],
			}],
		},
		"want": [],
	},
	"flares, and nothing said": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "37-flare"}},
				"to": {"half": {"form": "37-flare"}},
			}],
		},
		"want": [],
	},
	"not said, at its beginning": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "hose"}},
				"to": {"half": {"form": "37-flare"}},
				"none": ["clips"],
			}],
		},
		"want": [{"subject": "lines.water", "missing": ["clamped_by"]}],
	},
	"not said, at its end": {
		"input": {
			"lines": [{
				"path": "lines.water",
				"from": {"half": {"form": "37-flare"}},
				"to": {"half": {"form": "hose"}},
				"none": ["clips"],
			}],
		},
		"want": [{"subject": "lines.water", "missing": ["clamped_by"]}],
	},
	"ends not said": {
		"input": {"lines": [{"path": "lines.water", "clamped_by": "worm"}]},
		"want": [{"subject": "lines.water", "missing": ["from.half.form", "to.half.form"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(clamp, "lines", each.want) with input as each.input
}
