package rules.lines.flow_against_test

import data.lib.cases_test as trial
import data.rules.lines.flow_against

cases := {
	"scavenge on the pump's inlet": {
		"input": {"lines": [{
			"path": "lines.scavenge",
			"from": {"port": {"path": "driveline.ports.oil-in", "boundary": true, "takes": "engine oil"}},
			"to": {"port": {"path": "oil.tank.ports.in"}},
		}]},
		"want": [{
			"subject": "lines.scavenge",
			"at": "from",
			"also": ["driveline.ports.oil-in"],
			"case": "begins",
			"figures": {"service": "engine oil"},
		}],
	},
	"a port of the car that takes": {
		"input": {"lines": [{
			"path": "lines.scavenge",
			"from": {"port": {"path": "driveline.ports.oil-in", "boundary": false, "takes": "engine oil"}},
			"to": {"port": {"path": "oil.tank.ports.in"}},
		}]},
		"want": [],
	},
	"scavenge on the pump's outlet": {
		"input": {"lines": [{
			"path": "lines.scavenge",
			"from": {"port": {"path": "driveline.ports.oil-out", "boundary": true, "gives": "engine oil"}},
			"to": {"port": {"path": "oil.tank.ports.in"}},
		}]},
		"want": [],
	},
	"suction on the pump's outlet": {
		"input": {"lines": [{
			"path": "lines.suction",
			"from": {"port": {"path": "oil.tank.ports.out"}},
			"to": {"port": {"path": "driveline.ports.oil-out", "boundary": true, "gives": "engine oil"}},
		}]},
		"want": [{
			"subject": "lines.suction",
			"at": "to",
			"also": ["driveline.ports.oil-out"],
			"case": "ends",
			"figures": {"service": "engine oil"},
		}],
	},
	"a port of the car that gives": {
		"input": {"lines": [{
			"path": "lines.suction",
			"from": {"port": {"path": "oil.tank.ports.out"}},
			"to": {"port": {"path": "driveline.ports.oil-out", "boundary": false, "gives": "engine oil"}},
		}]},
		"want": [],
	},
	"suction on the pump's inlet": {
		"input": {"lines": [{
			"path": "lines.suction",
			"from": {"port": {"path": "oil.tank.ports.out"}},
			"to": {"port": {"path": "driveline.ports.oil-in", "boundary": true, "takes": "engine oil"}},
		}]},
		"want": [],
	},
	"both ways": {
		"input": {"lines": [
			{
				"path": "lines.one",
				"from": {"port": {"path": "driveline.ports.shared", "boundary": true, "both": "coolant"}},
				"to": {"port": {"path": "cooling.header.ports.fill"}},
			},
			{
				"path": "lines.two",
				"from": {"port": {"path": "cooling.header.ports.fill"}},
				"to": {"port": {"path": "driveline.ports.shared", "boundary": true, "both": "coolant"}},
			},
		]},
		"want": [],
	},
	"into the open air": {
		"input": {"lines": [{
			"path": "lines.vent",
			"from": {"port": {"path": "fuel.cell.ports.vent"}},
			"to": {"none": ["port"]},
		}]},
		"want": [],
	},
	"from the open air": {
		"input": {"lines": [{
			"path": "lines.vent",
			"from": {"none": ["port"]},
			"to": {"port": {"path": "fuel.cell.ports.vent"}},
		}]},
		"want": [],
	},
	"the driveline does not say which way, from": {
		"input": {"lines": [{
			"path": "lines.scavenge",
			"from": {"port": {"path": "driveline.ports.oil-in", "boundary": true}},
			"to": {"port": {"path": "oil.tank.ports.in"}},
		}]},
		"want": [{"subject": "lines.scavenge", "missing": ["from.port.gives|from.port.takes|from.port.both"]}],
	},
	"the driveline does not say which way, to": {
		"input": {"lines": [{
			"path": "lines.suction",
			"from": {"port": {"path": "oil.tank.ports.out"}},
			"to": {"port": {"path": "driveline.ports.oil-in", "boundary": true}},
		}]},
		"want": [{"subject": "lines.suction", "missing": ["to.port.gives|to.port.takes|to.port.both"]}],
	},
	"an end that nobody describes, from": {
		"input": {"lines": [{"path": "lines.a", "to": {"port": {"path": "oil.tank.ports.in"}}}]},
		"want": [{"subject": "lines.a", "missing": ["from.port"]}],
	},
	"an end that nobody describes, to": {
		"input": {"lines": [{"path": "lines.a", "from": {"port": {"path": "oil.tank.ports.in"}}}]},
		"want": [{"subject": "lines.a", "missing": ["to.port"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(flow_against, "lines", each.want) with input as each.input
}
