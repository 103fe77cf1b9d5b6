package rules.mounts.hole_spacing_test

import data.lib.cases_test as trial
import data.rules.mounts.hole_spacing

cases := {
	"too far apart by a hair over the play": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"apart": 0.000755}, "there": {"path": "driveline.mounts.left", "holes": {"apart": 0}}}]},
		"want": [{
			"subject": "mounts.left",
			"at": "holes.apart",
			"also": ["driveline.mounts.left"],
			"figures": {"here": 0.000755, "there": 0},
		}],
	},
	"apart by the play": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"apart": 0.00075}, "there": {"path": "driveline.mounts.left", "holes": {"apart": 0}}}]},
		"want": [],
	},
	"long side alike, short side not": {
		"input": {"mounts": [{
			"path": "mounts.box",
			"holes": {"count": 4, "apart": 0.11, "wide": 0.08},
			"there": {"path": "driveline.mounts.box", "holes": {"apart": 0.11, "wide": 0.084}},
		}]},
		"want": [{
			"subject": "mounts.box",
			"at": "holes.wide",
			"also": ["driveline.mounts.box"],
			"figures": {"here": 0.08, "there": 0.084},
		}],
	},
	"both sides alike": {
		"input": {"mounts": [{
			"path": "mounts.box",
			"holes": {"count": 4, "apart": 0.11, "wide": 0.08},
			"there": {"path": "driveline.mounts.box", "holes": {"apart": 0.11, "wide": 0.08}},
		}]},
		"want": [],
	},
	"two circles": {
		"input": {"mounts": [{"path": "mounts.nose", "holes": {"circle": 0.084}, "there": {"path": "driveline.mounts.nose", "holes": {"circle": 0.09}}}]},
		"want": [{
			"subject": "mounts.nose",
			"at": "holes.circle",
			"also": ["driveline.mounts.nose"],
			"figures": {"here": 0.084, "there": 0.09},
		}],
	},
	"one circle": {
		"input": {"mounts": [{"path": "mounts.nose", "holes": {"circle": 0.084}, "there": {"path": "driveline.mounts.nose", "holes": {"circle": 0.084}}}]},
		"want": [],
	},
	"a single bolt": {
		"input": {"mounts": [{"path": "mounts.nose", "holes": {"count": 1}, "there": {"path": "driveline.mounts.nose", "holes": {"count": 1}}}]},
		"want": [],
	},
	"a single bolt whose other half gives sides and a circle": {
		"input": {"mounts": [{"path": "mounts.nose", "holes": {"count": 1, "apart": 0.1, "wide": 0.1, "circle": 0.1}}, {"path": "mounts.tail", "holes": {"count": 1}, "there": {"path": "driveline.mounts.tail", "holes": {"wide": 0.1}}}]},
		"want": [],
	},
	"a side against a circle": {
		"input": {"mounts": [{"path": "mounts.nose", "holes": {"count": 2, "apart": 0.084}, "there": {"path": "driveline.mounts.nose", "holes": {"circle": 0.084}}}]},
		"want": [{"subject": "mounts.nose", "missing": ["there.holes.apart"]}],
	},
	"a circle against a side": {
		"input": {"mounts": [{"path": "mounts.nose", "holes": {"count": 2, "circle": 0.084}, "there": {"path": "driveline.mounts.nose", "holes": {"apart": 0.084}}}]},
		"want": [{"subject": "mounts.nose", "missing": ["there.holes.circle"]}],
	},
	"no short side across": {
		"input": {"mounts": [{
			"path": "mounts.box",
			"holes": {"count": 4, "apart": 0.11, "wide": 0.08},
			"there": {"path": "driveline.mounts.box", "holes": {"apart": 0.11}},
		}]},
		"want": [{"subject": "mounts.box", "missing": ["there.holes.wide"]}],
	},
	"no short side here": {
		"input": {"mounts": [{
			"path": "mounts.box",
			"holes": {"count": 4, "apart": 0.11},
			"there": {"path": "driveline.mounts.box", "holes": {"apart": 0.11, "wide": 0.08}},
		}]},
		"want": [{"subject": "mounts.box", "missing": ["holes.wide"]}],
	},
	"no spacing": {
		"input": {"mounts": [{"path": "mounts.left", "holes": {"count": 2}, "there": {"path": "driveline.mounts.left", "holes": {"count": 2}}}]},
		"want": [{"subject": "mounts.left", "missing": ["holes.apart|holes.circle", "there.holes.apart|there.holes.circle"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hole_spacing, "mounts", each.want) with input as each.input
}
