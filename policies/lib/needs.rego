# METADATA
# title: What a subject must say for a rule to judge it
# description: |
#   A need is a field of the subject, dotted into the objects it holds, or
#   several such fields joined by `|` of which one will do. A field is said if it
#   has a value or stands in the `none` of the object that would hold it: "looked,
#   there is none" is an answer. One left out or asked for ("?") has no value.
package lib.needs

# missing lists the needs that a subject does not meet, in the order given. Every
# rule asks this of every subject, so the usual is tried first: the field is there.
missing(subject, needs) := [need.text |
	some need in parsed(needs)
	object.get(subject, need.ways[0].path, null) == null
	not met(subject, need.ways)
]

# guessed lists the fields among the needs that the author marked as a guess.
guessed(subject, needs) := [way.field |
	some need in parsed(needs)
	some way in need.ways
	marked(subject, way.guessed)
]

met(subject, ways) if {
	some way in ways
	object.get(subject, way.path, null) != null
}

met(subject, ways) if {
	some way in ways
	marked(subject, way.none)
}

# marked tells whether one of the names stands in its list.
marked(subject, names) if {
	some name in names
	name.field in object.get(subject, name.list, [])
}

# parsed takes needs apart. OPA works a call out once, so this costs nothing for
# the subjects after the first. A way has the path to its field, and where the
# field, or an object on the way to it, would be named as none or as a guess.
parsed(needs) := [{"text": need, "ways": ways} |
	some need in needs
	ways := [way |
		some field in split(need, "|")
		path := split(field, ".")
		way := {"field": field, "path": path, "none": lists(path, "none"), "guessed": lists(path, "guessed")}
	]
]

lists(path, name) := [{"field": field, "list": array.concat(array.slice(path, 0, i), [name])} | some i, field in path]
