package rules.electrics.fuse_place_test

import data.lib.cases_test as trial
import data.rules.electrics.fuse_place

post := {"port": "electrics.posts.main"}

cases := {
	"far off": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "from": post, "unfused": 1.02}]},
		"want": [{"subject": "circuits.fan", "at": "unfused", "figures": {"unfused": 1.02, "most": 1.016}}],
	},
	"near enough": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "from": post, "unfused": 1.016}]},
		"want": [],
	},
	"from a channel": {
		"input": {"circuits": [
			{"path": "circuits.fan", "purpose": "fan", "from": {"port": "electrics.modules.main.4"}, "unfused": 1.02},
			{"path": "circuits.pump", "purpose": "fuel pump", "from": {"port": "electrics.modules.main.1"}},
		]},
		"want": [],
	},
	"cables without a fuse": {
		"input": {"circuits": [
			{"path": "circuits.starter", "purpose": "starter", "from": post, "unfused": 2},
			{"path": "circuits.strap", "purpose": "earth", "from": post, "unfused": 2},
			{"path": "circuits.charge", "purpose": "charging", "from": post, "unfused": 2},
			{"path": "circuits.spare-starter", "purpose": "starter", "from": post},
			{"path": "circuits.spare-strap", "purpose": "earth", "from": post},
			{"path": "circuits.spare-charge", "purpose": "charging", "from": post},
			{"path": "circuits.third-starter", "purpose": "starter"},
			{"path": "circuits.third-strap", "purpose": "earth"},
			{"path": "circuits.third-charge", "purpose": "charging"},
		]},
		"want": [],
	},
	"place not said": {
		"input": {"circuits": [{"path": "circuits.fan", "from": post}]},
		"want": [{"subject": "circuits.fan", "missing": ["purpose", "unfused"]}],
	},
	"nothing said": {
		"input": {"circuits": [{"path": "circuits.fan", "unfused": 1.02}]},
		"want": [{"subject": "circuits.fan", "missing": ["purpose", "from.port"]}],
	},
	"fed by a module, and no more said": {
		"input": {"circuits": [{"path": "circuits.fan", "purpose": "fan", "from": {"port": "electrics.modules.power.out-1"}}]},
		"want": [{"subject": "circuits.fan", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(fuse_place, "circuits", each.want) with input as each.input
}
