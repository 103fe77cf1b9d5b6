package rules.fuel.cell_date_test

import data.lib.cases_test as trial
import data.rules.fuel.cell_date

cases := {
	"past": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"standard": "FT3-1999"},
				"calc": {"cell_days_left": -1},
			}],
		},
		"want": [{
			"subject": "fuel",
			"at": "cell.made",
			"figures": {"days": 1, "standard": "FT3-1999"},
		}],
	},
	"last day": {
		"input": {
			"fuel": [{
				"path": "fuel",
				"cell": {"standard": "FT3-1999"},
				"calc": {"cell_days_left": 0},
			}],
		},
		"want": [],
	},
	"date not said": {
		"input": {"fuel": [{"path": "fuel", "cell": {"standard": "FT3-1999"}}]},
		"want": [{"subject": "fuel", "missing": ["calc.cell_days_left"]}],
	},
	"standard not said": {
		"input": {"fuel": [{"path": "fuel", "calc": {"cell_days_left": 1}}]},
		"want": [{"subject": "fuel", "missing": ["cell.standard"]}],
	},
	"a steel tank": {
		"input": {"fuel": [{"path": "fuel", "cell": {"none": ["standard"]}}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(cell_date, "fuel", each.want) with input as each.input
}
