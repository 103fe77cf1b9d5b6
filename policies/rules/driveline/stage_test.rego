package rules.driveline.stage_test

import data.lib.cases_test as trial
import data.rules.driveline.stage

cases := {
	"trial fit, and nothing in it": {"input": {"cars": [{"path": "car", "stage": "trial fit", "none": ["driveline"]}]}, "want": [{"subject": "car", "at": "stage", "case": "empty", "figures": {"stage": "trial fit"}}]},
	"joined, and nothing in it": {"input": {"cars": [{"path": "car", "stage": "joined", "none": ["driveline"]}]}, "want": [{"subject": "car", "at": "stage", "case": "empty", "figures": {"stage": "joined"}}]},
	"filled, and nothing in it": {"input": {"cars": [{"path": "car", "stage": "filled", "none": ["driveline"]}]}, "want": [{"subject": "car", "at": "stage", "case": "empty", "figures": {"stage": "filled"}}]},
	"first start, and nothing in it": {"input": {"cars": [{"path": "car", "stage": "first start", "none": ["driveline"]}]}, "want": [{"subject": "car", "at": "stage", "case": "empty", "figures": {"stage": "first start"}}]},
	"event, and nothing in it": {"input": {"cars": [{"path": "car", "stage": "event", "none": ["driveline"]}]}, "want": [{"subject": "car", "at": "stage", "case": "empty", "figures": {"stage": "event"}}]},
	"rolling, and nothing in it": {"input": {"cars": [{"path": "car", "stage": "rolling", "none": ["driveline"]}]}, "want": []},
	"at an event, and no papers": {"input": {"cars": [{"path": "car", "stage": "event", "driveline": "a.toml", "none": ["papers"]}]}, "want": []},
	"at an event, and nobody says what is in it": {"input": {"cars": [{"path": "car", "stage": "event", "none": ["papers"]}]}, "want": [{"subject": "car", "missing": ["driveline"]}]},
	"out and raised, and one in it": {"input": {"cars": [{"path": "car", "stage": "out and raised", "driveline": "a.toml"}]}, "want": [{"subject": "car", "at": "stage", "case": "full", "figures": {"stage": "out and raised", "driveline": "a.toml"}}]},
	"out and raised, and none in it": {"input": {"cars": [{"path": "car", "stage": "out and raised", "none": ["driveline"]}]}, "want": []},
	"out and stored, and one in it": {"input": {"cars": [{"path": "car", "stage": "out and stored", "driveline": "a.toml"}]}, "want": [{"subject": "car", "at": "stage", "case": "full", "figures": {"stage": "out and stored", "driveline": "a.toml"}}]},
	"out and stored, and none in it": {"input": {"cars": [{"path": "car", "stage": "out and stored", "none": ["driveline"]}]}, "want": []},
	"joined, and one in it": {"input": {"cars": [{"path": "car", "stage": "joined", "driveline": "a.toml"}]}, "want": []},
	"no stage said": {"input": {"cars": [{"path": "car", "driveline": "a.toml"}]}, "want": [{"subject": "car", "missing": ["stage"]}]},
	"no more said": {"input": {"cars": [{"path": "car", "use": "road"}]}, "want": [{"subject": "car", "missing": ["driveline", "stage"]}]},
}

test_cases[name] if {
	some name, each in cases
	trial.agrees(stage, "cars", each.want) with input as each.input
}
