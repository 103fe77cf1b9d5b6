# METADATA
# title: How a rule's cases are tried
# description: |
#   Every rule has `cases`: a part of a document as `input`, and as `want` the list
#   of all that the rule says of it. An entry of `want` is a finding, as much of it
#   as the case cares for, or a subject with all that was `missing` to judge it. A
#   subject that `want` does not name passes, or is none of the rule's business;
#   where it matters which, `want` names it with `judged` true or false.
package lib.cases_test

import data.lib.needs

# agrees tells whether a rule says what a case wants, neither more nor less.
agrees(rule, collection, want) if {
	told := array.concat([finding | some finding in rule.findings], gaps(rule, collection))
	silent := {wanted.subject: wanted.judged | some wanted in want}
	judged := {judgement.subject | some judgement in rule.judges}
	every subject, applies in silent {
		was := subject in judged
		was == applies
	}
	count(told) + count(silent) == count(want)
	every wanted in want {
		borne_out(wanted, told)
	}
	every said in told {
		some wanted in want
		meets(said, wanted)
	}
}

borne_out(wanted, _) if wanted.judged in {true, false}

borne_out(wanted, told) if {
	some said in told
	meets(said, wanted)
}

# gaps are the subjects that a rule could not judge, each with all that it lacks.
gaps(rule, collection) := [{"subject": thing.path, "missing": missing} |
	found := {finding.subject | some finding in rule.findings}
	some thing in input[collection]
	not thing.path in found
	missing := {need |
		some judgement in rule.judges
		judgement.subject == thing.path
		some need in needs.missing(thing, judgement.needs)
	}
	missing != set()
]

# meets tells whether something said holds all that a case wants of it.
meets(said, wanted) if {
	said.subject == wanted.subject
	said.missing == {need | some need in wanted.missing}
}

meets(said, wanted) if {
	not said.missing
	object.subset(said, wanted)
}
