# METADATA
# title: What the rules that hold were asked, and what they said
# description: |
#   Each rule by its id. Every answer is made of these, so they are gathered once;
#   a reference with a blank in it gathers them far quicker than `some` does.
package lib.asked

import data.lib.needs
import data.lib.scope

judges[id] := data.rules[rule.area][rule.name].judges if some id, rule in scope.holds

findings[id] := data.rules[rule.area][rule.name].findings if some id, rule in scope.holds

# judged are the subjects that a rule applied to.
judged[id] := {subject | subject := list[_].subject} if some id, list in judges

# found are the subjects that a rule found something on.
found[id] := {subject | subject := list[_].subject} if some id, list in findings

# fields are the needs of a rule, whichever subject it has them for.
fields[id] := {need | need := list[_].needs[_]} if some id, list in judges

# doubtful are the subjects that may lack a need. Of what a rule judges most is
# whole, and to look at all subjects at once for one need at a time is far quicker
# than to look at one after the other.
doubtful[id] := rest - intersection({subjects |
	some need in fields[id]
	subjects := needs.said(rule.subject, need)
}) if {
	some id, rule in scope.holds
	fields[id] != set()
	rest := judged[id] - found[id]
	rest != set()
}

# unsure are the subjects that may rest on a guess.
unsure[id] := judged[id] & union({subjects |
	some need in fields[id]
	subjects := needs.marked(rule.subject, need)
}) if {
	some id, rule in scope.holds
}
