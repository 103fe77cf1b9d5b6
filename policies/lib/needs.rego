# METADATA
# title: What a subject must say for a rule to judge it
# description: |
#   A need is a field of the subject, dotted into the objects it holds, or
#   several such fields joined by `|` of which one will do. A field is said if it
#   has a value or stands in the `none` of the object that would hold it: "looked,
#   there is none" is an answer. One left out or asked for ("?") has no value.
package lib.needs

# missing lists the needs that a subject does not meet, in the order given.
missing(subject, needs) := [need |
	some need in needs
	not met(subject, need)
]

# guessed lists the fields among the needs that the author marked as a guess.
guessed(subject, needs) := [field |
	some need in needs
	some field in split(need, "|")
	listed(subject, split(field, "."), "guessed")
]

met(subject, need) if {
	some path in paths(need)
	object.get(subject, path, null) != null
}

met(subject, need) if {
	some path in paths(need)
	listed(subject, path, "none")
}

# listed tells whether a field, or an object on the way to it, stands in the list
# of that name beside it.
listed(subject, path, name) if {
	some i, field in path
	field in object.get(subject, beside(path, i, name), [])
}

paths(need) := [split(field, ".") | some field in split(need, "|")]

beside(path, i, name) := array.concat(array.slice(path, 0, i), [name])
