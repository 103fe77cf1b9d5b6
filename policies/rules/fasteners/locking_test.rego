package rules.fasteners.locking_test

import data.lib.cases_test as trial
import data.rules.fasteners.locking

cases := {
	"a tapped bolt on its torque alone": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "lock": "unlocked"}]},
		"want": [{"subject": "fasteners.rail", "at": "lock", "figures": {"holds": "seat rail"}}],
	},
	"a tapped bolt that is wired": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "lock": "wire"}]},
		"want": [],
	},
	"a plain nut over a spring washer": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "lock": "spring-washer", "nut": "nut"}]},
		"want": [{"subject": "fasteners.rail", "at": "lock"}],
	},
	"a tapped bolt without a lock": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "none": ["lock"]}]},
		"want": [{"subject": "fasteners.rail", "at": "lock"}],
	},
	"a castle nut without its pin": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "nut": "castle-nut", "none": ["lock"]}]},
		"want": [{"subject": "fasteners.rail", "at": "lock"}],
	},
	"a locking nut without more": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "nut": "all-metal-locknut", "none": ["lock"]}]},
		"want": [],
	},
	"a locking nut that is called unlocked": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "nut": "nyloc-nut", "lock": "unlocked"}]},
		"want": [],
	},
	"not critical": {
		"input": {"fastenings": [
			{"path": "fasteners.tray", "critical": false, "holds": "undertray", "lock": "unlocked"},
			{"path": "fasteners.panel", "critical": false, "holds": "panel", "lock": "unlocked", "nut": "nut"},
			{"path": "fasteners.door", "critical": false, "holds": "door", "none": ["lock"]},
			{"path": "fasteners.flap", "critical": false, "holds": "flap", "nut": "nut", "none": ["lock"]},
			{"path": "fasteners.clip", "critical": false, "holds": "clip", "nut": "nut"},
			{"path": "fasteners.tab", "critical": false, "holds": "tab"},
			{"path": "fasteners.spare", "critical": false},
		]},
		"want": [],
	},
	"road wheels": {
		"input": {"fastenings": [
			{"path": "fasteners.front", "critical": true, "holds": "Road wheels", "lock": "unlocked"},
			{"path": "fasteners.rear", "critical": true, "holds": "rear wheels", "lock": "unlocked", "nut": "nut"},
			{"path": "fasteners.left", "critical": true, "holds": "left wheel nuts", "none": ["lock"]},
			{"path": "fasteners.right", "critical": true, "holds": "front wheel", "nut": "nut", "none": ["lock"]},
			{"path": "fasteners.spare", "critical": true, "holds": "road wheels", "nut": "nut"},
			{"path": "fasteners.trailer", "critical": true, "holds": "road wheels"},
		]},
		"want": [{"subject": "fasteners.trailer", "judged": false}],
	},
	"a flywheel": {
		"input": {"fastenings": [{"path": "fasteners.flywheel", "critical": true, "holds": "flywheel", "lock": "unlocked"}]},
		"want": [{"subject": "fasteners.flywheel"}],
	},
	"what it holds is not said": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "lock": "unlocked"}]},
		"want": [{"subject": "fasteners.rail", "missing": ["holds"]}],
	},
	"nothing said": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail"}]},
		"want": [{"subject": "fasteners.rail", "missing": ["lock|nut"]}],
	},
	"no nut, and nothing said of a lock": {
		"input": {"fastenings": [
			{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "none": ["nut"]},
			{"path": "fasteners.panel", "critical": false, "holds": "panel", "none": ["nut"]},
			{"path": "fasteners.wheel", "critical": true, "holds": "front wheel", "none": ["nut"]},
		]},
		"want": [{"subject": "fasteners.rail", "missing": ["lock"]}],
	},
	"a plain nut, and nothing said of a lock": {
		"input": {"fastenings": [{"path": "fasteners.rail", "critical": true, "holds": "seat rail", "nut": "nut"}]},
		"want": [{"subject": "fasteners.rail", "missing": ["lock"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(locking, "fastenings", each.want) with input as each.input
}
