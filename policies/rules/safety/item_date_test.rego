package rules.safety.item_date_test

import data.lib.cases_test as trial
import data.rules.safety.item_date

cases := {
	"a day late": {
		"input": {"dated_items": [{"path": "safety.seat", "kind": "seat", "calc": {"days_left": -1, "last_day": "2025-05-31"}}]},
		"want": [{"subject": "safety.seat", "at": "until", "case": "past", "figures": {"last": "2025-05-31"}}],
	},
	"on its last day": {
		"input": {"dated_items": [{"path": "safety.seat", "kind": "seat", "calc": {"days_left": 0, "last_day": "2025-05-31"}}]},
		"want": [{"subject": "safety.seat", "at": "until", "case": "near", "figures": {"last": "2025-05-31", "left": 0}}],
	},
	"just within two months": {
		"input": {"dated_items": [{"path": "safety.seat", "kind": "seat", "calc": {"days_left": 59.5, "last_day": "2025-05-31"}}]},
		"want": [{"subject": "safety.seat", "at": "until", "case": "near", "figures": {"last": "2025-05-31", "left": 59.5}}],
	},
	"two months": {
		"input": {"dated_items": [{"path": "safety.seat", "kind": "seat", "calc": {"days_left": 60, "last_day": "2025-05-31"}}]},
		"want": [],
	},
	"a bladder is judged with the fuel": {
		"input": {"dated_items": [
			{"path": "fuel.cell", "kind": "fuel cell", "calc": {"days_left": -1, "last_day": "2025-05-31"}},
			{"path": "safety.fire-system", "kind": "fire system", "calc": {"days_left": 1, "last_day": "2025-05-31"}},
		]},
		"want": [],
	},
	"no end on the label, and none by the authority": {
		"input": {"dated_items": [{"path": "safety.helmet", "kind": "helmet", "none": ["until"]}]},
		"want": [],
	},
	"taken without a last day": {
		"input": {"dated_items": [{"path": "safety.helmet", "kind": "helmet", "calc": {"by": "fia"}}]},
		"want": [],
	},
	"no date at all": {
		"input": {"dated_items": [{"path": "safety.helmet", "kind": "helmet"}]},
		"want": [{"subject": "safety.helmet", "missing": ["calc.days_left|until|calc.by"]}],
	},
	"a bladder without a date": {
		"input": {"dated_items": [{"path": "fuel.cell", "kind": "fuel cell"}]},
		"want": [{"subject": "fuel.cell", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(item_date, "dated_items", each.want) with input as each.input
}
