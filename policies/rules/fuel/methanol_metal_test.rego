package rules.fuel.methanol_metal_test

import data.lib.cases_test as trial
import data.rules.fuel.methanol_metal

cases := {
	"bare from.half": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "from.half",
			"also": ["lines.feed.from.end"],
			"figures": {"metal": "aluminium"},
		}],
	},
	"bare from.half, approved": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {
						"metal": "aluminium",
						"path": "lines.feed.from.end",
						"approved": "methanol",
					},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"bare from.half in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "petrol",
				"from": {
					"half": {"metal": "aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"bare from.port.half": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "aluminium", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "from.port.half",
			"also": ["fuel.filter.ports.out.end"],
			"figures": {"metal": "aluminium"},
		}],
	},
	"bare from.port.half, approved": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {
						"half": {
							"metal": "aluminium",
							"path": "fuel.filter.ports.out.end",
							"approved": "methanol",
						},
					},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"bare from.port.half in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "petrol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "aluminium", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"bare to.half": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "to.half",
			"also": ["lines.feed.to.end"],
			"figures": {"metal": "aluminium"},
		}],
	},
	"bare to.half, approved": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {
						"metal": "aluminium",
						"path": "lines.feed.to.end",
						"approved": "methanol",
					},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"bare to.half in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "petrol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"bare to.port.half": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "aluminium", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [{
			"subject": "lines.feed",
			"at": "to.port.half",
			"also": ["driveline.ports.fuel-in.end"],
			"figures": {"metal": "aluminium"},
		}],
	},
	"bare to.port.half, approved": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {
						"half": {
							"metal": "aluminium",
							"path": "driveline.ports.fuel-in.end",
							"approved": "methanol",
						},
					},
				},
			}],
		},
		"want": [],
	},
	"bare to.port.half in petrol": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "petrol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "aluminium", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"coated": {
		"input": {
			"lines": [{
				"path": "lines.feed",
				"service": "fuel",
				"fuel": "methanol",
				"from": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.from.end"},
					"port": {"half": {"metal": "stainless", "path": "fuel.filter.ports.out.end"}},
				},
				"to": {
					"half": {"metal": "anodised-aluminium", "path": "lines.feed.to.end"},
					"port": {"half": {"metal": "stainless", "path": "driveline.ports.fuel-in.end"}},
				},
			}],
		},
		"want": [],
	},
	"metals not said": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel", "fuel": "methanol"}]},
		"want": [{
			"subject": "lines.feed",
			"missing": [
				"from.half.metal",
				"from.port.half.metal",
				"to.half.metal",
				"to.port.half.metal",
			],
		}],
	},
	"fuel not said": {
		"input": {"lines": [{"path": "lines.feed", "service": "fuel"}]},
		"want": [{"subject": "lines.feed", "missing": ["fuel"]}],
	},
	"nothing said": {
		"input": {"lines": [{"path": "lines.feed", "clips": 0.1}]},
		"want": [{"subject": "lines.feed", "missing": ["service", "fuel"]}],
	},
	"coolant": {
		"input": {"lines": [{"path": "lines.feed", "service": "coolant"}]},
		"want": [],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(methanol_metal, "lines", each.want) with input as each.input
}
