package rules.fuel.methanol_metal_test

import data.lib.cases_test as trial
import data.rules.fuel.methanol_metal

cases := {
	"steel": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "steel"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [],
	},
	"a bare end of the line": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "aluminium"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "at": "here", "figures": {"metal": "aluminium"}}],
	},
	"a bare port": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "steel"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "cast-aluminium"},
			}],
		},
		"want": [{
			"subject": "lines.feed.to",
			"at": "there",
			"also": ["driveline.ports.fuel-in.end"],
			"figures": {"metal": "cast-aluminium"},
		}],
	},
	"anodised": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "anodised-aluminium"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [],
	},
	"an end that is approved": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "aluminium", "approved": "methanol"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [],
	},
	"an end approved for petrol": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "aluminium", "approved": "petrol"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "at": "here"}],
	},
	"a port that is approved": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "steel"},
				"there": {
					"path": "driveline.ports.fuel-in.end",
					"metal": "aluminium",
					"approved": "methanol",
				},
			}],
		},
		"want": [],
	},
	"a port approved for petrol": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
				"here": {"metal": "steel"},
				"there": {
					"path": "driveline.ports.fuel-in.end",
					"metal": "aluminium",
					"approved": "petrol",
				},
			}],
		},
		"want": [{"subject": "lines.feed.to", "at": "there"}],
	},
	"petrol": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "petrol",
				"here": {"metal": "aluminium"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "aluminium"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
	"oil": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "engine oil",
				"here": {"metal": "aluminium"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
	"fuel not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"here": {"metal": "steel"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["fuel"]}],
	},
	"service not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"here": {"metal": "steel"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["service"]}],
	},
	"methanol, and service not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"fuel": "methanol",
				"here": {"metal": "steel"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": true}],
	},
	"a rod": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "rod",
				"here": {"metal": "steel"},
				"there": {"path": "driveline.ports.fuel-in.end", "metal": "steel"},
			}],
		},
		"want": [{"subject": "lines.feed.to", "judged": false}],
	},
	"metals not said": {
		"input": {
			"joints": [{
				"path": "lines.feed.to",
				"kind": "line",
				"service": "fuel",
				"fuel": "methanol",
			}],
		},
		"want": [{"subject": "lines.feed.to", "missing": ["here.metal", "there.metal"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(methanol_metal, "joints", each.want) with input as each.input
}
