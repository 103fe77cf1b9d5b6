package rules.fittings.band_profile_test

import data.lib.cases_test as trial
import data.rules.fittings.band_profile

cases := {
	"one flange bigger": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.090501},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "a",
					"outside": 0.09,
				},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.outside",
			"also": ["driveline.ports.exhaust"],
			"case": "outside",
			"figures": {"here": 0.090501, "there": 0.09},
		}],
	},
	"as big as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.0905},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "a",
					"outside": 0.09,
				},
			}],
		},
		"want": [],
	},
	"one flange smaller": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.09},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "a",
					"outside": 0.090501,
				},
			}],
		},
		"want": [{"subject": "lines.feed.to", "case": "outside"}],
	},
	"as small as may be": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.09},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "a",
					"outside": 0.0905,
				},
			}],
		},
		"want": [],
	},
	"two profiles": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.09},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "b",
					"outside": 0.09,
				},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "here.family",
			"also": ["driveline.ports.exhaust"],
			"case": "profile",
			"figures": {"here_family": "a", "there_family": "b"},
		}],
	},
	"one profile": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.09},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "a",
					"outside": 0.09,
				},
			}],
		},
		"want": [],
	},
	"nothing measured": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band"},
				"there": {"form": "V-band", "path": "driveline.ports.exhaust"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"missing": ["here.outside", "there.outside", "here.family", "there.family"],
		}],
	},
	"a half of no known form": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"family": "a", "outside": 0.09},
				"there": {
					"form": "V-band",
					"path": "driveline.ports.exhaust",
					"family": "b",
					"outside": 0.1,
				},
			}],
		},
		"want": [
			{"subject": "lines.feed.to", "case": "outside"},
			{"subject": "lines.feed.to", "case": "profile"},
		],
	},
	"a mate of no known form": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "V-band", "family": "a", "outside": 0.09},
				"there": {"path": "driveline.ports.exhaust", "family": "b", "outside": 0.1},
			}],
		},
		"want": [
			{"subject": "lines.feed.to", "case": "outside"},
			{"subject": "lines.feed.to", "case": "profile"},
		],
	},
	"an exhaust of which no form is known": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "pipe"}]},
		"want": [{"subject": "lines.feed.to", "missing": ["here.form", "there.form"]}],
	},
	"a hose of which no form is known": {
		"input": {"joints": [{"path": "lines.feed.to", "kind": "line"}]},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
	"a flange that nobody measured": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "flange"},
				"there": {"form": "flange"},
			}],
		},
		"want": [],
	},
	"a flange with bolts": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "pipe",
				"here": {"form": "flange", "outside": 0.09, "family": "a"},
				"there": {"form": "flange", "outside": 0.1, "family": "b", "path": "x"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(band_profile, "joints", each.want) with input as each.input
}
