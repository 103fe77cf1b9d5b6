package rules.fuel.filter_element_test

import data.lib.cases_test as trial
import data.rules.fuel.filter_element

cases := {
	"paper in E85": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "filter",
				"element": "10 micron, Paper",
				"fuel": "E85",
				"alcohol": 0.82,
			}],
		},
		"want": [{
			"subject": "fuel.filter",
			"at": "element",
			"figures": {"element": "10 micron, Paper", "fuel": "E85"},
		}],
	},
	"paper strainer in E85": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "strainer",
				"element": "10 micron, Paper",
				"fuel": "E85",
				"alcohol": 0.82,
			}],
		},
		"want": [{"subject": "fuel.filter", "at": "element"}],
	},
	"mesh in E85": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "filter",
				"element": "10 micron, mesh",
				"fuel": "E85",
				"alcohol": 0.82,
			}],
		},
		"want": [],
	},
	"paper in E10": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "filter",
				"element": "10 micron, Paper",
				"fuel": "E10",
				"alcohol": 0.1,
			}],
		},
		"want": [],
	},
	"paper in a little more": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "filter",
				"element": "10 micron, Paper",
				"fuel": "E85",
				"alcohol": 0.1005,
			}],
		},
		"want": [{"subject": "fuel.filter", "at": "element"}],
	},
	"approved for it": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "filter",
				"element": "10 micron, Paper",
				"fuel": "E85",
				"alcohol": 0.82,
				"approved_for": ["E85"],
			}],
		},
		"want": [],
	},
	"approved for another": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "filter",
				"element": "10 micron, Paper",
				"fuel": "E85",
				"alcohol": 0.82,
				"approved_for": ["petrol"],
			}],
		},
		"want": [{"subject": "fuel.filter", "at": "element"}],
	},
	"a pump": {
		"input": {
			"fuel_parts": [{
				"path": "fuel.filter",
				"name": "pump",
				"element": "10 micron, Paper",
				"fuel": "E85",
				"alcohol": 0.82,
			}],
		},
		"want": [{"subject": "fuel.filter", "judged": false}],
	},
	"nothing said": {
		"input": {"fuel_parts": [{"path": "fuel.filter", "name": "filter", "fuel": "E85"}]},
		"want": [{"subject": "fuel.filter", "missing": ["element", "alcohol"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(filter_element, "fuel_parts", each.want) with input as each.input
}
