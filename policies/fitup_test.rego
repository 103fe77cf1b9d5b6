package fitup_test

import data.fitup

# One small rule, given as the two sets that it would have worked out, so that
# only what fitup makes of them is tried here.
registry := {"lines.length": {
	"area": "lines", "name": "length", "stages": ["trial_fit", "joined"],
	"rulebook": "workshop", "subject": "lines",
}}

rules := {"lines": {"length": {
	"judges": {
		{"subject": "lines.feed", "needs": ["length", "hose.bend"]},
		{"subject": "lines.vent", "needs": ["length"]},
	},
	"findings": {{"subject": "lines.feed", "figures": {"length": 1}}},
}}}

feed := {"path": "lines.feed", "length": 1, "guessed": ["length"]}

vent := {"path": "lines.vent", "asked": ["length"]}

document := {"stages": ["joined"], "lines": [feed, vent]}

whole := said if {
	said := fitup with input as document with data.registry as registry with data.rules as rules
}

test_a_finding_carries_its_rule if {
	whole.findings == {{"rule": "lines.length", "subject": "lines.feed", "figures": {"length": 1}}}
}

test_judged_by_rule if whole.judged == {"lines.length": {"lines.feed", "lines.vent"}}

test_cannot_tell_of_a_need_asked if {
	whole.cannot_tell == {{"rule": "lines.length", "subject": "lines.vent", "missing": ["length"]}}
}

test_cannot_tell_where_nothing_is_found if {
	said := fitup with input as document
		with data.registry as registry
		with data.rules as object.union(rules, {"lines": {"length": {"findings": set()}}})
	said.cannot_tell == {
		{"rule": "lines.length", "subject": "lines.feed", "missing": ["hose.bend"]},
		{"rule": "lines.length", "subject": "lines.vent", "missing": ["length"]},
	}
}

test_a_guess_is_told_under_a_finding if {
	whole.guesses == {{"rule": "lines.length", "subject": "lines.feed", "guessed": ["length"]}}
}

test_a_guess_that_nothing_rests_on_is_not_told if {
	said := fitup with input as {"stages": ["joined"], "lines": [feed, object.union(vent, {"guessed": ["length"]})]}
		with data.registry as registry
		with data.rules as rules
	said.guesses == whole.guesses
}

test_no_strays if whole.strays == set()

test_other_stage_is_not_judged if {
	said := fitup with input as object.union(document, {"stages": ["hanging"]})
		with data.registry as registry
		with data.rules as rules
	said.judged == {}
	said.findings == set()
	said.cannot_tell == set()
}

booked := {"lines.length": object.union(registry["lines.length"], {"rulebook": "hillclimb"})}

test_a_rulebook_holds_only_if_the_car_is_held_to_it if {
	without := fitup.judged with input as document with data.registry as booked with data.rules as rules
	without == {}

	within := fitup.judged with input as object.union(document, {"rulebooks": ["hillclimb"]})
		with data.registry as booked
		with data.rules as rules
	within == {"lines.length": {"lines.feed", "lines.vent"}}
}

test_a_collection_not_mentioned if {
	said := fitup with input as {"stages": ["joined"], "unknown": ["lines", "ports"]}
		with data.registry as registry
		with data.rules as {"lines": {"length": {"judges": set(), "findings": set()}}}
	said.cannot_tell == {{"rule": "lines.length", "collection": "lines"}}
}

test_strays if {
	said := fitup with input as document
		with data.registry as registry
		with data.rules as {"lines": {"length": {
			"judges": {{"subject": "lines.gone", "needs": []}},
			"findings": {{"subject": "lines.feed", "figures": {}}},
		}}}
	said.strays == {
		{"rule": "lines.length", "found": "lines.feed"},
		{"rule": "lines.length", "judged": "lines.gone"},
	}
}
