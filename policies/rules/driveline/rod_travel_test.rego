package rules.driveline.rod_travel_test

import data.lib.cases_test as trial
import data.rules.driveline.rod_travel

cases := {
	"short": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "worked_by": {"path": "parts.pedal.ports.arm", "stroke": 0.033}, "port": {"path": "driveline.ports.throttle", "stroke": 0.034}}]}, "want": [{"subject": "rods.throttle", "at": "worked_by.stroke", "also": ["driveline.ports.throttle"], "figures": {"gives": 0.033, "asks": 0.034}}]},
	"alike": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "worked_by": {"path": "parts.pedal.ports.arm", "stroke": 0.034}, "port": {"path": "driveline.ports.throttle", "stroke": 0.034}}]}, "want": []},
	"from the gear lever": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "lever": {"throw": 0.03}, "worked_by": {"path": "parts.pedal.ports.arm", "stroke": 0.033}, "port": {"path": "driveline.ports.throttle", "stroke": 0.034}}]}, "want": []},
	"from a gear lever that says no stroke": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "lever": {"throw": 0.03}, "worked_by": {"path": "parts.pedal.ports.arm"}, "port": {"path": "driveline.ports.throttle", "stroke": 0.034}}]}, "want": []},
	"to a gearbox that says no stroke": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "lever": {"throw": 0.03}, "worked_by": {"path": "parts.pedal.ports.arm", "stroke": 0.033}, "port": {"path": "driveline.ports.throttle"}}]}, "want": []},
	"the pedal says nothing": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "worked_by": {"path": "parts.pedal.ports.arm"}, "port": {"path": "driveline.ports.throttle", "stroke": 0.034}}]}, "want": [{"subject": "rods.throttle", "missing": ["worked_by.stroke"]}]},
	"the throttle says nothing": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "worked_by": {"path": "parts.pedal.ports.arm", "stroke": 0.033}, "port": {"path": "driveline.ports.throttle"}}]}, "want": [{"subject": "rods.throttle", "missing": ["port.stroke"]}]},
	"neither says anything": {"input": {"rods": [{"path": "rods.throttle", "from": {"port": "driveline.throttle"}, "to": {"port": "parts.pedal.arm"}, "worked_by": {"path": "parts.pedal.ports.arm"}, "port": {"path": "driveline.ports.throttle"}}]}, "want": []},
	"an end not said": {
		"input": {"rods": [{"path": "rods.throttle"}]},
		"want": [{"subject": "rods.throttle", "missing": ["from.port", "to.port"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(rod_travel, "rods", each.want) with input as each.input
}
