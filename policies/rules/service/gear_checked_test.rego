package rules.service.gear_checked_test

import data.lib.cases_test as trial
import data.rules.service.gear_checked

cases := {
	"a sling of half a year": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "sling", "calc": {"age": 6}}]},
		"want": [],
	},
	"an older sling": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "sling", "calc": {"age": 7}}]},
		"want": [{
			"subject": "shop.slings.chain",
			"figures": {"kind": "sling", "age": 7, "most": 6},
		}],
	},
	"a sling just over": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "sling", "calc": {"age": 6.05}}]},
		"want": [{
			"subject": "shop.slings.chain",
			"figures": {"kind": "sling", "age": 6.05, "most": 6},
		}],
	},
	"a sling of another year": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "sling", "calc": {"age": 13}}]},
		"want": [{
			"subject": "shop.slings.chain",
			"figures": {"kind": "sling", "age": 13, "most": 6},
		}],
	},
	"a hoist of a year": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "hoist", "calc": {"age": 12}}]},
		"want": [],
	},
	"an older hoist": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "hoist", "calc": {"age": 12.1}}]},
		"want": [{
			"subject": "shop.slings.chain",
			"figures": {"kind": "hoist", "age": 12.1, "most": 12},
		}],
	},
	"an old lift point": {
		"input": {
			"gear": [{"path": "shop.slings.chain", "kind": "lift point", "calc": {"age": 20}}],
		},
		"want": [{"subject": "shop.slings.chain", "judged": false}],
	},
	"never": {
		"input": {"gear": [{"path": "shop.slings.chain", "kind": "sling"}]},
		"want": [{"subject": "shop.slings.chain", "missing": ["calc.age"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(gear_checked, "gear", each.want) with input as each.input
}
