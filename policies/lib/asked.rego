# METADATA
# title: What the rules that hold were asked, and what they said
# description: |
#   Each rule by its id. Every answer is made of these, so they are gathered once;
#   a reference with a blank in it gathers them far quicker than `some` does.
package lib.asked

import data.lib.scope

judges[id] := data.rules[rule.area][rule.name].judges if some id, rule in scope.holds

findings[id] := data.rules[rule.area][rule.name].findings if some id, rule in scope.holds

# judged are the subjects that a rule applied to.
judged[id] := {subject | subject := list[_].subject} if some id, list in judges

# found are the subjects that a rule found something on, for each that did.
found[id] := {subject | subject := list[_].subject} if {
	some id, list in findings
	list != set()
}
