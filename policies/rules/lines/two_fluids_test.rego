package rules.lines.two_fluids_test

import data.lib.cases_test as trial
import data.rules.lines.two_fluids

cases := {
	"fuel into the oil": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "fuel"}}, "to": {"port": {"path": "b.ports.in", "service": "engine oil"}}}]}, "want": [{"subject": "lines.l1", "at": "to", "also": ["a.ports.out", "b.ports.in"], "case": "hurts", "figures": {"one": "fuel", "other": "engine oil"}}]},
	"fuel into fuel": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "fuel"}}, "to": {"port": {"path": "b.ports.in", "service": "fuel"}}}]}, "want": []},
	"brake fluid from the steering": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "steering fluid"}}, "to": {"port": {"path": "b.ports.in", "service": "brake fluid"}}}]}, "want": [{"subject": "lines.l1", "at": "to", "also": ["a.ports.out", "b.ports.in"], "case": "hurts", "figures": {"one": "steering fluid", "other": "brake fluid"}}]},
	"oil into the coolant": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "engine oil"}}, "to": {"port": {"path": "b.ports.in", "service": "coolant"}}}]}, "want": [{"subject": "lines.l1", "at": "to", "also": ["a.ports.out", "b.ports.in"], "case": "spoils", "figures": {"one": "engine oil", "other": "coolant"}}]},
	"oil into oil": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "engine oil"}}, "to": {"port": {"path": "b.ports.in", "service": "engine oil"}}}]}, "want": []},
	"fuel and fuel vapour": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "fuel"}}, "to": {"port": {"path": "b.ports.in", "service": "fuel vapour"}}}]}, "want": []},
	"engine oil and crankcase breath": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "engine oil"}}, "to": {"port": {"path": "b.ports.in", "service": "crankcase breath"}}}]}, "want": []},
	"gearbox oil and axle oil": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "gearbox oil"}}, "to": {"port": {"path": "b.ports.in", "service": "axle oil"}}}]}, "want": []},
	"coolant and water": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "coolant"}}, "to": {"port": {"path": "b.ports.in", "service": "water"}}}]}, "want": []},
	"brake fluid and clutch fluid": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "brake fluid"}}, "to": {"port": {"path": "b.ports.in", "service": "clutch fluid"}}}]}, "want": []},
	"air and charge air": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "air"}}, "to": {"port": {"path": "b.ports.in", "service": "charge air"}}}]}, "want": []},
	"air and compressed air": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "air"}}, "to": {"port": {"path": "b.ports.in", "service": "compressed air"}}}]}, "want": []},
	"air and manifold pressure": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "air"}}, "to": {"port": {"path": "b.ports.in", "service": "manifold pressure"}}}]}, "want": []},
	"air and vacuum": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "air"}}, "to": {"port": {"path": "b.ports.in", "service": "vacuum"}}}]}, "want": []},
	"air and crankcase breath": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "air"}}, "to": {"port": {"path": "b.ports.in", "service": "crankcase breath"}}}]}, "want": []},
	"air and fuel vapour": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "air"}}, "to": {"port": {"path": "b.ports.in", "service": "fuel vapour"}}}]}, "want": []},
	"two gases of one family, neither first": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "vacuum"}}, "to": {"port": {"path": "b.ports.in", "service": "manifold pressure"}}}]}, "want": []},
	"two of a kind that is in no family": {"input": {"lines": [{"path": "lines.l1", "from": {"port": {"path": "a.ports.out", "service": "steering fluid"}}, "to": {"port": {"path": "b.ports.in", "service": "steering fluid"}}}]}, "want": []},
	"an end in the open air": {"input": {"lines": [{"path": "lines.a", "from": {"port": {"path": "a.ports.out", "service": "fuel vapour"}}, "to": {"none": ["port"]}}]}, "want": []},
	"from the open air": {"input": {"lines": [{"path": "lines.a", "to": {"port": {"path": "a.ports.out", "service": "air"}}, "from": {"none": ["port"]}}]}, "want": []},
	"where it comes from is not said": {"input": {"lines": [{"path": "lines.a", "from": {"port": {"path": "a.ports.out"}}, "to": {"port": {"path": "b.ports.in", "service": "fuel"}}}]}, "want": [{"subject": "lines.a", "missing": ["from.port.service"]}]},
	"where it goes is not said": {"input": {"lines": [{"path": "lines.a", "from": {"port": {"path": "a.ports.out", "service": "fuel"}}, "to": {"port": {"path": "b.ports.in"}}}]}, "want": [{"subject": "lines.a", "missing": ["to.port.service"]}]},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(two_fluids, "lines", each.want) with input as each.input
}
