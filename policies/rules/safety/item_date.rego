# METADATA
# title: Safety item past its date
# description: |
#   Webbing, shells and nets age unseen, and the scrutineer turns away what is out
#   of date. The label decides; where it gives only the day of make, the
#   authority's life is counted from it. In date does not mean undamaged: after a
#   crash, a knock or an acid splash the date says nothing.
# related_resources:
#   - ref: fia-253
#     description: art. 6 (harnesses) and art. 16 (seats)
#   - ref: sfi-16
#     description: life of the webbing
#   - ref: sfi-27.1
#     description: window nets
#   - ref: sfi-38.1
#     description: head restraints
#   - ref: fia-list-25
#     description: helmets
# custom:
#   cases:
#     past: {level: fault, message: "{subject} ran out on {last}"}
#     near: {level: advice, message: "{subject} runs out on {last}, in {left} days"}
#   subject: dated_items
#   stages: [event]
#   figures:
#     last: {dimension: date}
#     left: {dimension: number}
#   fix: replace it, or have it re-certified where its authority allows that; ask the event's scrutineer which life holds
#   rulebook: workshop
#   confidence: practice
package rules.safety.item_date

import data.rules.safety.limits.item_date as limits

worn := {"harness", "seat", "helmet", "window net", "head restraint"}

# An authority that takes an item without a last day is named, and gives none.
judges contains {"subject": item.path, "needs": ["calc.days_left|until|calc.by"]} if {
	some item in input.dated_items
	item.kind in worn
}

findings contains {
	"subject": item.path,
	"at": "until",
	"case": "past",
	"figures": {"last": item.calc.last_day},
} if {
	some item in input.dated_items
	item.kind in worn
	item.calc.days_left < 0
}

findings contains {
	"subject": item.path,
	"at": "until",
	"case": "near",
	"figures": {"last": item.calc.last_day, "left": item.calc.days_left},
} if {
	some item in input.dated_items
	item.kind in worn
	item.calc.days_left >= 0
	item.calc.days_left < limits.near.value
}
