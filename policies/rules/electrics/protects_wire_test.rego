package rules.electrics.protects_wire_test

import data.lib.cases_test as trial
import data.rules.electrics.protects_wire

cases := {
	"fused too high": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "calc": {"protection": 31, "ampacity": 30}}]},
		"want": [{"subject": "circuits.fan", "at": "fuse", "case": "over", "figures": {"fuse": 31, "ampacity": 30}}],
	},
	"fused for its wire": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "calc": {"protection": 30, "ampacity": 30}}]},
		"want": [],
	},
	"starter and earth": {
		"input": {"circuits": [
			{"path": "circuits.starter", "purpose": "starter", "calc": {"protection": 500, "ampacity": 200}},
			{"path": "circuits.strap", "purpose": "earth", "calc": {"protection": 500, "ampacity": 200}},
			{"path": "circuits.spare-starter", "purpose": "starter", "none": ["fuse"]},
			{"path": "circuits.spare-strap", "purpose": "earth", "none": ["fuse"]},
		]},
		"want": [],
	},
	"no fuse": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "none": ["fuse"], "calc": {"ampacity": 30}}]},
		"want": [{"subject": "circuits.fan", "at": "fuse", "case": "bare", "figures": {}}],
	},
	"no fuse, but a channel": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "none": ["fuse"], "calc": {"protection": 30, "ampacity": 30}}]},
		"want": [],
	},
	"no fuse in the charging cable": {
		"input": {"circuits": [{"path": "circuits.charge", "purpose": "charging", "none": ["fuse"], "calc": {"ampacity": 120}}]},
		"want": [],
	},
	"nothing said": {
		"input": {"circuits": [{"path": "circuits.fan"}]},
		"want": [{"subject": "circuits.fan", "missing": ["purpose", "calc.protection|fuse", "calc.ampacity"]}],
	},
	"nothing said of a fuse": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "calc": {"ampacity": 30}}]},
		"want": [{"subject": "circuits.fan", "missing": ["calc.protection|fuse"]}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(protects_wire, "circuits", each.want) with input as each.input
}
