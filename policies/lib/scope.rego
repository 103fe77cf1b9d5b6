# METADATA
# title: Which rules hold for a document, and what they judge in it
# description: Kept apart from fitup.rego, which holds nothing but answers.
package lib.scope

# holds are the rules of a stage that the document covers, from a rulebook that
# the car is held to, with what the registry says of each.
holds[id] := rule if {
	some id, rule in data.registry
	rule.rulebook in rulebooks
	covered(rule.stages)
}

covered(stages) if {
	some stage in stages
	stage in input.stages
}

rulebooks contains "workshop"

rulebooks contains book if some book in input.rulebooks

# subjects finds a thing by its collection and path.
subjects[collection] := {thing.path: thing | some thing in things} if some collection, things in input

# paths are the subjects of a collection.
paths[collection] := object.keys(things) if some collection, things in subjects
