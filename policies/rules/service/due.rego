# METADATA
# title: Part at the end of its life
# description: |
#   Hours, runs and months wear parts that look sound. The count follows the part
#   from car to car, and the first limit that is reached decides.
# related_resources:
#   - ref: common-practice
#     description: the life that the builder or the maker set for the part
# custom:
#   cases:
#     used: {level: fault, message: "the life of {subject} is used up: {left}"}
#     near: {level: advice, message: "{subject} nears the end of its life: {left} left"}
#   subject: life
#   stages: [hanging, event]
#   figures:
#     left: {dimension: text}
#   fix: replace or rebuild it, and write the day and the count at which that was done
#   rulebook: workshop
#   confidence: practice
package rules.service.due

import data.rules.service.limits.due as limits

judges contains {"subject": item.path, "needs": ["calc.share", "calc.left"]} if some item in input.life

findings contains {"subject": item.path, "at": "lasts", "case": "used", "figures": {"left": item.calc.left}} if {
	some item in input.life
	item.calc.share >= 1
}

findings contains {
	"subject": item.path,
	"at": "lasts",
	"case": "near",
	"figures": {"left": item.calc.left},
} if {
	some item in input.life
	item.calc.share > limits.near.value
	item.calc.share < 1
}
