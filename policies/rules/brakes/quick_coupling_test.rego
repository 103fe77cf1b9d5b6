package rules.brakes.quick_coupling_test

import data.lib.cases_test as trial
import data.rules.brakes.quick_coupling

cases := {
	"dry break": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"service": "brake fluid",
				"there": {"path": "brakes.front.in", "form": "dry-break"},
				"here": {"form": "dry-break"},
			}],
		},
		"want": [{
			"subject": "lines.brake.to",
			"at": "here.form",
			"also": ["brakes.front.in"],
			"figures": {"form": "dry-break"},
		}],
	},
	"the port alone": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"service": "brake fluid",
				"there": {"path": "brakes.front.in", "form": "push-connector"},
				"here": {"form": "inverted-flare"},
			}],
		},
		"want": [{
			"subject": "lines.brake.to",
			"at": "there.form",
			"also": ["brakes.front.in"],
			"figures": {"form": "push-connector"},
		}],
	},
	"flared unions": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"service": "brake fluid",
				"there": {"path": "brakes.front.in", "form": "inverted-flare"},
				"here": {"form": "inverted-flare"},
			}],
		},
		"want": [],
	},
	"this end alone": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"service": "brake fluid",
				"there": {"path": "brakes.front.in", "form": "inverted-flare"},
				"here": {"form": "dry-break"},
			}],
		},
		"want": [{"subject": "lines.brake.to", "at": "here.form"}],
	},
	"not said": {
		"input": {"joints": [{"path": "lines.brake.to", "kind": "line", "service": "brake fluid"}]},
		"want": [{"subject": "lines.brake.to", "missing": ["here.form", "there.form"]}],
	},
	"service not said": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"here": {"form": "dry-break"},
				"there": {"form": "dry-break", "path": "x"},
			}],
		},
		"want": [{"subject": "lines.brake.to", "missing": ["service"]}],
	},
	"clutch": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"service": "clutch fluid",
				"here": {"form": "dry-break"},
				"there": {"form": "dry-break", "path": "x"},
			}],
		},
		"want": [],
	},
	"clutch port": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "line",
				"service": "clutch fluid",
				"here": {"form": "banjo"},
				"there": {"form": "dry-break", "path": "x"},
			}],
		},
		"want": [],
	},
	"no line": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "rod",
				"service": "brake fluid",
				"here": {"form": "dry-break"},
				"there": {"form": "dry-break", "path": "x"},
			}],
		},
		"want": [],
	},
	"no line either": {
		"input": {
			"joints": [{
				"path": "lines.brake.to",
				"kind": "rod",
				"service": "brake fluid",
				"here": {"form": "banjo"},
				"there": {"form": "dry-break", "path": "x"},
			}],
		},
		"want": [],
	},
	"no line, nothing said": {
		"input": {"joints": [{"path": "lines.brake.to", "kind": "rod", "service": "brake fluid"}]},
		"want": [],
	},
	"no line, no service": {
		"input": {
			"joints": [{"path": "lines.brake.to", "kind": "rod", "here": {"form": "rod-end"}}],
		},
		"want": [],
	},
	"clutch, and no more said": {
		"input": {"joints": [{"path": "lines.clutch.to", "kind": "line", "service": "clutch fluid"}]},
		"want": [{"subject": "lines.clutch.to", "judged": false}],
	},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(quick_coupling, "joints", each.want) with input as each.input
}
