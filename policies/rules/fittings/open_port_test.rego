package rules.fittings.open_port_test

import data.lib.cases_test as trial
import data.rules.fittings.open_port

cases := {
	"open": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
			}],
		},
		"want": [{"subject": "oil.tank.ports.out"}],
	},
	"joined": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
				"joined_by": ["lines.feed.from"],
			}],
		},
		"want": [],
	},
	"capped": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
				"capped": "-8 cap",
			}],
		},
		"want": [],
	},
	"vent": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
				"purpose": "vent",
			}],
		},
		"want": [],
	},
	"may stay open": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
				"may_stay_open": true,
			}],
		},
		"want": [],
	},
	"power post": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "stud"},
				"settled": true,
			}],
		},
		"want": [],
	},
	"open of the driveline": {
		"input": {
			"ports": [{
				"path": "driveline.ports.feed",
				"boundary": true,
				"owner": "driveline",
				"half": {"form": "37-flare"},
				"settled": true,
			}],
		},
		"want": [{"subject": "driveline.ports.feed"}],
	},
	"joined of the driveline": {
		"input": {
			"ports": [{
				"path": "driveline.ports.feed",
				"boundary": true,
				"owner": "driveline",
				"half": {"form": "37-flare"},
				"settled": true,
				"joined_by": ["lines.feed.from"],
			}],
		},
		"want": [],
	},
	"capped of the driveline": {
		"input": {
			"ports": [{
				"path": "driveline.ports.feed",
				"boundary": true,
				"owner": "driveline",
				"half": {"form": "37-flare"},
				"settled": true,
				"capped": "-8 cap",
			}],
		},
		"want": [],
	},
	"vent of the driveline": {
		"input": {
			"ports": [{
				"path": "driveline.ports.feed",
				"boundary": true,
				"owner": "driveline",
				"half": {"form": "37-flare"},
				"settled": true,
				"purpose": "vent",
			}],
		},
		"want": [],
	},
	"may stay open of the driveline": {
		"input": {
			"ports": [{
				"path": "driveline.ports.feed",
				"boundary": true,
				"owner": "driveline",
				"half": {"form": "37-flare"},
				"settled": true,
				"may_stay_open": true,
			}],
		},
		"want": [],
	},
	"power post of the driveline": {
		"input": {
			"ports": [{
				"path": "driveline.ports.feed",
				"boundary": true,
				"owner": "driveline",
				"half": {"form": "stud"},
				"settled": true,
			}],
		},
		"want": [],
	},
	"form not said": {
		"input": {"ports": [{"path": "oil.tank.ports.out", "owner": "car", "boundary": false}]},
		"want": [{"subject": "oil.tank.ports.out", "missing": ["half.form", "settled"]}],
	},
	"a line ends nowhere known": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"half": {"form": "37-flare"},
			}],
		},
		"want": [{"subject": "oil.tank.ports.out", "missing": ["settled"]}],
	},
	"joined, form not said": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "car",
				"boundary": false,
				"joined_by": ["lines.feed.from"],
			}],
		},
		"want": [{"subject": "oil.tank.ports.out", "judged": true}],
	},
	"joined within the driveline": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "driveline",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
				"joined_by": ["driveline.lines.x.from"],
			}],
		},
		"want": [{"subject": "oil.tank.ports.out", "judged": false}],
	},
	"within the driveline": {
		"input": {
			"ports": [{
				"path": "oil.tank.ports.out",
				"owner": "driveline",
				"boundary": false,
				"half": {"form": "37-flare"},
				"settled": true,
			}],
		},
		"want": [{"subject": "oil.tank.ports.out", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(open_port, "ports", each.want) with input as each.input
}
