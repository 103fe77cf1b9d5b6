package rules.fire.hand_size_test

import data.lib.cases_test as trial
import data.rules.fire.hand_size

cases := {
	"little foam": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "foam", "volume": 0.00239}}}]},
		"want": [{
			"subject": "car",
			"at": "safety.hand_extinguisher.volume",
			"case": "foam",
			"figures": {"volume": 0.00239, "least_volume": 0.0024},
		}],
	},
	"enough foam": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "foam", "volume": 0.0024}}}]},
		"want": [],
	},
	"little gas": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "gas", "charge": 1.99}}}]},
		"want": [{
			"subject": "car",
			"at": "safety.hand_extinguisher.charge",
			"case": "charge",
			"figures": {"charge": 1.99, "least_charge": 2, "agent": "gas"},
		}],
	},
	"enough gas": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "gas", "charge": 2}}}]},
		"want": [],
	},
	"little powder": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "powder", "charge": 1.99}}}]},
		"want": [{"subject": "car", "case": "charge", "figures": {"charge": 1.99, "least_charge": 2, "agent": "powder"}}],
	},
	"enough powder": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "powder", "charge": 2}}}]},
		"want": [],
	},
	"a mist, which the table does not list": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "water mist", "volume": 0.001}}}]},
		"want": [],
	},
	"agent not said": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"volume": 0.001}}}]},
		"want": [{"subject": "car", "missing": ["safety.hand_extinguisher.agent"]}],
	},
	"foam not measured": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "foam"}}}]},
		"want": [{"subject": "car", "missing": ["safety.hand_extinguisher.volume"]}],
	},
	"gas not weighed": {
		"input": {"cars": [{"path": "car", "safety": {"hand_extinguisher": {"agent": "gas"}}}]},
		"want": [{"subject": "car", "missing": ["safety.hand_extinguisher.charge"]}],
	},
	"none carried": {
		"input": {"cars": [{"path": "car", "safety": {"none": ["hand_extinguisher"]}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(hand_size, "cars", each.want) with input as each.input
}
