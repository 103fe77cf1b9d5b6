package rules.cage.tubes_test

import data.lib.cases_test as trial
import data.rules.cage.tubes

cases := {
	"1.75 in x 0.095 in for main members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.04445, "wall": 0.002413},
					"other_tube": {"outer": 0.06, "wall": 0.003},
				},
			}],
		},
		"want": [],
	},
	"1.75 in, a little under, x 0.095 in for main members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.044427775, "wall": 0.002413},
					"other_tube": {"outer": 0.06, "wall": 0.003},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "main",
			"figures": {"outer": 0.044427775, "wall": 0.002413},
		}],
	},
	"1.75 in x 0.095 in, a little under, for main members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.04445, "wall": 0.0024117935000000004},
					"other_tube": {"outer": 0.06, "wall": 0.003},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "main",
			"at": "cage.main_tube",
			"figures": {"outer": 0.04445, "wall": 0.0024117935000000004},
		}],
	},
	"50 mm x 2.0 mm for main members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.05, "wall": 0.002},
					"other_tube": {"outer": 0.06, "wall": 0.003},
				},
			}],
		},
		"want": [],
	},
	"50 mm, a little under, x 2.0 mm for main members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.049975000000000006, "wall": 0.002},
					"other_tube": {"outer": 0.06, "wall": 0.003},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "main",
			"figures": {"outer": 0.049975000000000006, "wall": 0.002},
		}],
	},
	"50 mm x 2.0 mm, a little under, for main members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.05, "wall": 0.001999},
					"other_tube": {"outer": 0.06, "wall": 0.003},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "main",
			"at": "cage.main_tube",
			"figures": {"outer": 0.05, "wall": 0.001999},
		}],
	},
	"38 mm x 2.5 mm for other members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.06, "wall": 0.003},
					"other_tube": {"outer": 0.038, "wall": 0.0025},
				},
			}],
		},
		"want": [],
	},
	"38 mm, a little under, x 2.5 mm for other members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.06, "wall": 0.003},
					"other_tube": {"outer": 0.037981, "wall": 0.0025},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "other",
			"figures": {"outer": 0.037981, "wall": 0.0025},
		}],
	},
	"38 mm x 2.5 mm, a little under, for other members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.06, "wall": 0.003},
					"other_tube": {"outer": 0.038, "wall": 0.00249875},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "other",
			"at": "cage.other_tube",
			"figures": {"outer": 0.038, "wall": 0.00249875},
		}],
	},
	"40 mm x 2.0 mm for other members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.06, "wall": 0.003},
					"other_tube": {"outer": 0.04, "wall": 0.002},
				},
			}],
		},
		"want": [],
	},
	"40 mm, a little under, x 2.0 mm for other members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.06, "wall": 0.003},
					"other_tube": {"outer": 0.03998, "wall": 0.002},
				},
			}],
		},
		"want": [{"subject": "car", "case": "other", "figures": {"outer": 0.03998, "wall": 0.002}}],
	},
	"40 mm x 2.0 mm, a little under, for other members": {
		"input": {
			"cars": [{
				"path": "car",
				"cage": {
					"main_tube": {"outer": 0.06, "wall": 0.003},
					"other_tube": {"outer": 0.04, "wall": 0.001999},
				},
			}],
		},
		"want": [{
			"subject": "car",
			"case": "other",
			"at": "cage.other_tube",
			"figures": {"outer": 0.04, "wall": 0.001999},
		}],
	},
	"nothing said": {
		"input": {"cars": [{"path": "car"}]},
		"want": [{
			"subject": "car",
			"missing": [
				"cage.main_tube.outer",
				"cage.main_tube.wall",
				"cage.other_tube.outer",
				"cage.other_tube.wall",
			],
		}],
	},
	"no cage": {"input": {"cars": [{"path": "car", "none": ["cage"]}]}, "want": []},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(tubes, "cars", each.want) with input as each.input
}
