package rules.fire.service_date_test

import data.lib.cases_test as trial
import data.rules.fire.service_date

cases := {
	"a day late": {
		"input": {"dated_items": [{"path": "safety.hand-extinguisher", "kind": "hand extinguisher", "calc": {"service_days_left": -1}}]},
		"want": [{"subject": "safety.hand-extinguisher", "at": "serviced", "case": "past", "figures": {"days": 1}}],
	},
	"on its day": {
		"input": {"dated_items": [{"path": "safety.hand-extinguisher", "kind": "hand extinguisher", "calc": {"service_days_left": 0}}]},
		"want": [{"subject": "safety.hand-extinguisher", "at": "serviced", "case": "near", "figures": {"days": 0}}],
	},
	"just within two months": {
		"input": {"dated_items": [{"path": "safety.fire-system", "kind": "fire system", "calc": {"service_days_left": 59.5}}]},
		"want": [{"subject": "safety.fire-system", "at": "serviced", "case": "near", "figures": {"days": 59.5}}],
	},
	"two months": {
		"input": {"dated_items": [{"path": "safety.fire-system", "kind": "fire system", "calc": {"service_days_left": 60}}]},
		"want": [],
	},
	"other items have no service": {
		"input": {"dated_items": [
			{"path": "safety.harness", "kind": "harness", "calc": {"service_days_left": -1}},
			{"path": "safety.seat", "kind": "seat", "calc": {"service_days_left": 1}},
			{"path": "safety.helmet", "kind": "helmet"},
		]},
		"want": [],
	},
	"never serviced": {
		"input": {"dated_items": [{"path": "safety.fire-system", "kind": "fire system"}]},
		"want": [{"subject": "safety.fire-system", "missing": ["calc.service_days_left"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(service_date, "dated_items", each.want) with input as each.input
}
