package rules.electrics.pin_meets_test

import data.lib.cases_test as trial
import data.rules.electrics.pin_meets

cases := {
	"given and taken": {
		"input": {"pins": [{"path": "pins.loom-a.F", "here": {"gives": "start"}, "there": {"takes": "start"}}]},
		"want": [],
	},
	"another thing taken": {
		"input": {"pins": [{"path": "pins.loom-a.F", "here": {"gives": "start"}, "there": {"takes": "knock"}}]},
		"want": [{"subject": "pins.loom-a.F", "case": "unlike", "figures": {"here": "start", "there": "knock"}}],
	},
	"taken and given": {
		"input": {"pins": [{"path": "pins.loom-a.P", "here": {"takes": "5 V"}, "there": {"gives": "5 V"}}]},
		"want": [],
	},
	"another thing given": {
		"input": {"pins": [{"path": "pins.loom-a.P", "here": {"takes": "5 V"}, "there": {"gives": "12 V"}}]},
		"want": [{"subject": "pins.loom-a.P", "case": "unlike", "figures": {"here": "5 V", "there": "12 V"}}],
	},
	"one bus": {
		"input": {"pins": [{"path": "pins.loom-a.G", "here": {"both": "bus high"}, "there": {"both": "bus high"}}]},
		"want": [],
	},
	"two buses": {
		"input": {"pins": [{"path": "pins.loom-a.G", "here": {"both": "bus high"}, "there": {"both": "bus low"}}]},
		"want": [{"subject": "pins.loom-a.G", "case": "unlike", "figures": {"here": "bus high", "there": "bus low"}}],
	},
	"both give": {
		"input": {"pins": [{"path": "pins.loom-a.F", "here": {"gives": "start"}, "there": {"takes": "start", "gives": "5 V"}}]},
		"want": [{"subject": "pins.loom-a.F", "case": "clash", "figures": {"here": "start", "there": "5 V"}}],
	},
	"both take": {
		"input": {"pins": [{"path": "pins.loom-a.P", "here": {"takes": "5 V"}, "there": {"takes": "knock", "gives": "5 V"}}]},
		"want": [{"subject": "pins.loom-a.P", "case": "idle", "figures": {"here": "5 V", "there": "knock"}}],
	},
	"what the driveline's pin is has to be looked up": {
		"input": {"pins": [{"path": "pins.loom-a.P", "here": {"takes": "5 V"}, "asked": ["there"]}]},
		"want": [{"subject": "pins.loom-a.P", "missing": ["there.gives|there.takes|there.both"]}],
	},
	"what the car's pin is has to be looked up": {
		"input": {"pins": [{"path": "pins.loom-a.P", "there": {"takes": "5 V"}, "asked": ["here"]}]},
		"want": [{"subject": "pins.loom-a.P", "missing": ["here.gives|here.takes|here.both"]}],
	},
	"the driveline has no such pin": {
		"input": {"pins": [{"path": "pins.loom-a.P", "here": {"takes": "5 V"}}]},
		"want": [{"subject": "pins.loom-a.P", "case": "unfed", "figures": {"here": "5 V"}}],
	},
	"the car has no such pin": {
		"input": {"pins": [{"path": "driveline.pins.loom-a.Z", "there": {"takes": "5 V"}}]},
		"want": [{"subject": "driveline.pins.loom-a.Z", "case": "unfed", "figures": {"here": "5 V"}}],
	},
	"spare outputs": {
		"input": {"pins": [
			{"path": "pins.loom-a.S", "here": {"gives": "spare"}},
			{"path": "driveline.pins.loom-a.T", "there": {"gives": "spare"}},
		]},
		"want": [],
	},
	"nothing said of this half": {
		"input": {"pins": [{"path": "pins.loom-a.F", "here": {"load": 1}, "there": {"takes": "start"}}]},
		"want": [{"subject": "pins.loom-a.F", "missing": ["here.gives|here.takes|here.both"]}],
	},
	"nothing said of the other half": {
		"input": {"pins": [{"path": "pins.loom-a.F", "here": {"gives": "start"}, "there": {"load": 1}}]},
		"want": [{"subject": "pins.loom-a.F", "missing": ["there.gives|there.takes|there.both"]}],
	},
	"a lone pin of the car, and nothing said": {
		"input": {"pins": [{"path": "pins.loom-a.F", "here": {"load": 1}}]},
		"want": [
			{"subject": "pins.loom-a.F", "missing": ["here.gives|here.takes|here.both"]},
		],
	},
	"a lone pin of the driveline, and nothing said": {
		"input": {"pins": [{"path": "driveline.pins.loom-a.F", "there": {"load": 1}}]},
		"want": [
			{"subject": "driveline.pins.loom-a.F", "missing": ["there.gives|there.takes|there.both"]},
		],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(pin_meets, "pins", each.want) with input as each.input
}
