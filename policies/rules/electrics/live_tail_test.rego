package rules.electrics.live_tail_test

import data.lib.cases_test as trial
import data.rules.electrics.live_tail

cases := {
	"nothing done": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": true, "purpose": "starter", "none": ["tail_when_out"]}]},
		"want": [{"subject": "circuits.starter", "at": "tail_when_out", "figures": {}}],
	},
	"capped, and nothing done": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": true, "purpose": "starter", "tail_when_out": "boot over the ring", "from": {"port": "electrics.posts.main"}, "to": {"port": "driveline.starter"}, "none": ["tail_when_out"]}]},
		"want": [{"subject": "circuits.starter"}],
	},
	"capped, with no fuse": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": true, "purpose": "starter", "tail_when_out": "boot over the ring", "from": {"port": "electrics.posts.main"}, "to": {"port": "driveline.starter"}, "none": ["fuse"]}]},
		"want": [],
	},
	"dead behind the main switch": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": true, "purpose": "starter", "dead_when_isolated": true, "none": ["tail_when_out"]}]},
		"want": [],
	},
	"dead behind the main switch, and nothing said": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": true, "purpose": "starter", "dead_when_isolated": true}]},
		"want": [],
	},
	"both ends in the car": {
		"input": {"circuits": [
			{"path": "circuits.pump", "boundary": false, "purpose": "fuel pump", "from": {"port": "electrics.posts.main"}, "to": {"port": "fuel.pump"}, "none": ["tail_when_out"]},
			{"path": "circuits.fan", "boundary": false, "purpose": "fan", "from": {"port": "electrics.posts.main"}, "to": {"port": "cooling.fan"}},
		]},
		"want": [
			{"subject": "circuits.pump", "judged": false},
			{"subject": "circuits.fan", "judged": false},
		],
	},
	"an earth and a bus": {
		"input": {"circuits": [
			{"path": "circuits.strap", "boundary": true, "purpose": "earth", "none": ["tail_when_out"]},
			{"path": "circuits.bus", "boundary": true, "purpose": "data", "none": ["tail_when_out"]},
			{"path": "circuits.spare-strap", "boundary": true, "purpose": "earth"},
			{"path": "circuits.spare-bus", "boundary": true, "purpose": "data"},
		]},
		"want": [],
	},
	"nothing said": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": true}]},
		"want": [{"subject": "circuits.starter", "missing": ["purpose", "tail_when_out", "from.port", "to.port"]}],
	},
	"where it goes not said": {
		"input": {"circuits": [{"path": "circuits.starter", "boundary": false, "purpose": "starter", "from": {"port": "electrics.posts.main"}, "none": ["tail_when_out"]}]},
		"want": [{"subject": "circuits.starter", "missing": ["to.port"]}],
	},
	"where it comes from not said": {
		"input": {"circuits": [{"path": "circuits.charge", "boundary": false, "purpose": "charging", "to": {"port": "electrics.posts.main"}, "none": ["tail_when_out"]}]},
		"want": [{"subject": "circuits.charge", "missing": ["from.port"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(live_tail, "circuits", each.want) with input as each.input
}
