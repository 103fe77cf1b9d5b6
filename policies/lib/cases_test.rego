# METADATA
# title: How a rule's cases are tried
# description: |
#   Every rule has `cases`: a part of a document as `input`, and as `want` the list
#   of all that the rule says of it. An entry of `want` is a finding, as much of it
#   as the case cares for, or a subject with what was `missing` to judge it. A
#   subject that `want` does not name passes, or is none of the rule's business.
package lib.cases_test

import data.lib.needs

# agrees tells whether a rule says what a case wants, neither more nor less.
agrees(rule, collection, want) if {
	told := array.concat([finding | some finding in rule.findings], gaps(rule, collection))
	count(told) == count(want)
	every wanted in want {
		some said in told
		meets(said, wanted)
	}
	every said in told {
		some wanted in want
		meets(said, wanted)
	}
}

gaps(rule, collection) := [{"subject": thing.path, "missing": missing} |
	found := {finding.subject | some finding in rule.findings}
	some judgement in rule.judges
	not judgement.subject in found
	some thing in input[collection]
	thing.path == judgement.subject
	missing := needs.missing(thing, judgement.needs)
	count(missing) > 0
]

# meets tells whether something said holds all that a case wants of it.
meets(said, wanted) if said == wanted

meets(said, wanted) if {
	not wanted.missing
	object.subset(said, wanted)
}
