package rules.fasteners.engagement_test

import data.lib.cases_test as trial
import data.rules.fasteners.engagement

cases := {
	"short in cast aluminium": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "tapped": "cast-aluminium", "calc": {"engagement_diameters": 1.9, "engagement_needed": 2}}]},
		"want": [{
			"subject": "mounts.left.bolts",
			"at": "engaged",
			"figures": {"engaged": 1.9, "needed": 2, "metal": "cast-aluminium"},
		}],
	},
	"deep enough": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "tapped": "cast-aluminium", "calc": {"engagement_diameters": 2, "engagement_needed": 2}}]},
		"want": [],
	},
	"special fasteners": {
		"input": {"fastenings": [
			{"path": "fasteners.one.bolts", "tapped": "aluminium", "what": "stretch bolt", "calc": {"engagement_diameters": 0.8, "engagement_needed": 1}},
			{"path": "fasteners.two.bolts", "tapped": "aluminium", "class": "special", "calc": {"engagement_diameters": 0.8, "engagement_needed": 1}},
			{"path": "fasteners.three.bolts", "tapped": "aluminium", "what": "stretch bolt"},
			{"path": "fasteners.four.bolts", "tapped": "aluminium", "class": "special"},
			{"path": "fasteners.five.bolts", "what": "band clamp"},
			{"path": "drains.sump.plug", "tapped": "aluminium", "washer": "18x24 copper", "calc": {"engagement_diameters": 0.8, "engagement_needed": 1}},
			{"path": "drains.block.plug", "tapped": "aluminium", "washer": "14x20 copper"},
			{"path": "drains.box.plug", "washer": "16x22 copper"},
			{"path": "fasteners.six.bolts", "class": "special"},
		]},
		"want": [],
	},
	"with a nut": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "tapped": "aluminium", "nut": "nut", "calc": {"engagement_diameters": 0.8, "engagement_needed": 1}}]},
		"want": [],
	},
	"with a nut, and nothing known of the thread": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "tapped": "aluminium", "nut": "nut"}]},
		"want": [],
	},
	"with a nut and no metal": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "nut": "nut"}]},
		"want": [{"subject": "mounts.left.bolts", "judged": false}],
	},
	"no turns known": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "tapped": "steel"}]},
		"want": [{"subject": "mounts.left.bolts", "missing": ["calc.engagement_diameters", "calc.engagement_needed"]}],
	},
	"into nothing known": {
		"input": {"fastenings": [{"path": "mounts.left.bolts", "head": "hex"}]},
		"want": [{"subject": "mounts.left.bolts", "missing": ["nut|tapped"]}],
	},
	"no nut, and into nothing known": {
		"input": {"fastenings": [
			{"path": "mounts.left.bolts", "head": "hex", "none": ["nut"]},
			{"path": "fasteners.screw", "head": "hex", "what": "wood screw", "none": ["nut"]},
			{"path": "drains.sump", "head": "hex", "washer": "copper", "none": ["nut"]},
			{"path": "parts.turbo.bolts", "class": "special", "none": ["nut"]},
			{"path": "access.bonnet.held", "head": "quarter-turn", "none": ["nut"]},
			{"path": "access.gaiter.held", "head": "press-stud", "none": ["nut"]},
			{"path": "access.tray.held", "head": "rivet", "none": ["nut"]},
		]},
		"want": [{"subject": "mounts.left.bolts", "missing": ["tapped"]}],
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
	trial.agrees(engagement, "fastenings", each.want) with input as each.input
}
