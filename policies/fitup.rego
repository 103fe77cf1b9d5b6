# METADATA
# title: What every rule that holds says of one document
# description: |
#   The one entry point over all rules. `data.registry` names the rules that are
#   loaded and says where each stands, in which stages it holds, to which
#   rulebook it belongs and which collection it judges; `input` is the document.
#   A rule is asked only for what it found and whom it judged. What it could not
#   tell, and what rests on a guess, is worked out here once for all of them.
# entrypoint: true
package fitup

import data.lib.asked
import data.lib.needs
import data.lib.scope

# findings are what the rules found, each with the id of its rule.
findings contains object.union(finding, {"rule": id}) if {
	some id, list in asked.findings
	some finding in list
}

# judged lists the subjects that each rule applied to.
judged := asked.judged

# cannot_tell lists the subjects that a rule applied to without a field it
# needs. A rule that found something had all it needed to find it. Nearly all that
# is judged is whole, and to look for one value that is not there sorts that out
# far quicker than to work out what is missing.
cannot_tell contains {"rule": id, "subject": judgement.subject, "missing": missing} if {
	some id, judgements in asked.judges
	things := scope.subjects[scope.holds[id].subject]
	some judgement in judgements
	thing := things[judgement.subject]
	some need in judgement.needs
	object.get(thing, split(need, "."), null) == null
	not asked.found[id][judgement.subject]
	missing := needs.missing(thing, judgement.needs)
	missing != []
}

# A collection that the spec does not mention leaves a rule nothing to look at.
cannot_tell contains {"rule": id, "collection": rule.subject} if {
	some id, rule in scope.holds
	rule.subject in input.unknown
}

# guesses lists what a finding takes as given although its author only guessed it.
guesses contains {"rule": id, "subject": judgement.subject, "guessed": guessed} if {
	some id, found in asked.found
	some judgement in asked.judges[id]
	judgement.subject in found
	guessed := needs.guessed(scope.subjects[scope.holds[id].subject][judgement.subject], judgement.needs)
	guessed != []
}

# strays are faults of a rule: it found something on a subject that it did not
# judge, or judged one that is not in its collection.
strays contains {"rule": id, "found": subject} if {
	some id, found in asked.found
	some subject in (found - asked.judged[id])
}

strays contains {"rule": id, "judged": subject} if {
	some id, judged in asked.judged
	some subject in (judged - scope.paths[scope.holds[id].subject])
}
