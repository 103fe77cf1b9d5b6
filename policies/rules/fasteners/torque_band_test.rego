package rules.fasteners.torque_band_test

import data.lib.cases_test as trial
import data.rules.fasteners.torque_band

band := {"torque_least": 41, "torque_most": 54}

cases := {
	"too little": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 40, "calc": band}]},
		"want": [{"subject": "mounts.left.bolts", "at": "torque", "case": "low", "figures": {"torque": 40, "least": 41}}],
	},
	"the least": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 41, "calc": band}]},
		"want": [],
	},
	"the most": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 54, "calc": band}]},
		"want": [],
	},
	"too much": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 55, "calc": band}]},
		"want": [{"subject": "mounts.left.bolts", "at": "torque", "case": "high", "figures": {"torque": 55, "most": 54}}],
	},
	"below, by its maker": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 40, "torque_by": "engine manual", "calc": band}]},
		"want": [],
	},
	"above, by its maker": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 55, "torque_by": "engine manual", "calc": band}]},
		"want": [],
	},
	"below, a special fastener": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 40, "class": "special", "calc": band}]},
		"want": [],
	},
	"above, a special fastener": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque": 55, "class": "special", "calc": band}]},
		"want": [],
	},
	"special fasteners by another name": {
		"input": {"fastenings": [
			{"path": "fasteners.one.bolts", "torque": 40, "what": "stretch bolt", "calc": band},
			{"path": "fasteners.two.bolts", "torque": 55, "what": "stretch bolt", "calc": band},
			{"path": "fasteners.three.bolts", "what": "band clamp"},
			{"path": "drains.sump.plug", "torque": 40, "washer": "18x24 copper", "calc": band},
			{"path": "drains.block.plug", "torque": 55, "washer": "14x20 copper", "calc": band},
			{"path": "drains.box.plug", "washer": "16x22 copper"},
		]},
		"want": [],
	},
	"by its maker, and not said": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "torque_by": "engine manual"}]},
		"want": [],
	},
	"special, and not said": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "class": "special"}]},
		"want": [],
	},
	"not said": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "head": "hex"}]},
		"want": [{"subject": "mounts.left.bolts", "missing": ["torque", "calc.torque_least", "calc.torque_most"]}],
	},
	"a quarter turn": {
		"input": {"fastenings": [{"path": "access.bonnet.held", "head": "quarter-turn"}]},
		"want": [],
	},
	"a press stud": {
		"input": {"fastenings": [{"path": "access.gaiter.held", "head": "press-stud"}]},
		"want": [],
	},
	"a rivet": {
		"input": {"fastenings": [{"path": "access.tray.held", "head": "rivet"}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(torque_band, "fastenings", each.want) with input as each.input
}
