# METADATA
# title: Which rules hold for a document, and what they judge in it
# description: Kept apart from fitup.rego, which holds nothing but answers.
package lib.scope

# holds are the rules of a stage that the document covers, from a rulebook that
# the car is held to.
holds contains id if {
	some id, rule in data.registry
	some stage in rule.stages
	stage in input.stages
	rule.rulebook in rulebooks
}

rulebooks contains "workshop"

rulebooks contains book if some book in input.rulebooks

# subjects finds a thing by its collection and path.
subjects[collection] := {thing.path: thing | some thing in things} if some collection, things in input

# unsure are the paths of the things that hold a guess. Most do not, and to look
# for the key in their text is far quicker than to walk through them.
unsure[collection] := {thing.path |
	some thing in things
	contains(json.marshal(thing), `"guessed":`)
} if {
	some collection, things in input
}
