# METADATA
# title: Car held to another edition than the event's
# description: |
#   Rules change each year, in dates and in sizes. What is found here by a
#   rulebook holds for the edition that the car is held to; if the event runs
#   under another, read that one.
# related_resources:
#   - ref: common-practice
#     description: the regulations of the event name the edition
# custom:
#   level: advice
#   subject: books
#   stages: [event]
#   message: "the car is held to the edition {car}; the next event runs under {event}"
#   figures:
#     car: {dimension: text}
#     event: {dimension: text}
#   fix: get the edition that the event runs under, compare what changed, and write it as the edition of the car
#   rulebook: workshop
#   confidence: practice
package rules.event.edition

judges contains {"subject": book.path, "needs": ["edition", "event_edition"]} if some book in input.books

findings contains {
	"subject": book.path,
	"at": "edition",
	"figures": {"car": book.edition, "event": book.event_edition},
} if {
	some book in input.books
	book.edition != book.event_edition
}
