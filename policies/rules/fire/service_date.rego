# METADATA
# title: Extinguisher past its service
# description: |
#   A bottle loses charge unseen and its valve sticks. The scrutineer reads the
#   date of the last check on it.
# related_resources:
#   - ref: fia-253
#     description: "art. 7: a check no more than two years after filling or the last one"
#   - ref: motorsport-uk-ncr
#     description: chapter 7 appendix 6 art. 3.6
# custom:
#   cases:
#     past: {level: fault, message: "the service of {subject} was due {days} days ago"}
#     near: {level: advice, message: "the service of {subject} is due in {days} days"}
#   subject: dated_items
#   stages: [event]
#   figures:
#     days: {dimension: number}
#   fix: have it serviced and its label dated
#   rulebook: workshop
#   confidence: practice
package rules.fire.service_date

import data.rules.fire.limits.service_date as limits

bottles := {"hand extinguisher", "fire system"}

judges contains {"subject": item.path, "needs": ["calc.service_days_left"]} if {
	some item in input.dated_items
	item.kind in bottles
}

findings contains {
	"subject": item.path,
	"at": "serviced",
	"case": "past",
	"figures": {"days": abs(item.calc.service_days_left)},
} if {
	some item in input.dated_items
	item.kind in bottles
	item.calc.service_days_left < 0
}

findings contains {
	"subject": item.path,
	"at": "serviced",
	"case": "near",
	"figures": {"days": item.calc.service_days_left},
} if {
	some item in input.dated_items
	item.kind in bottles
	item.calc.service_days_left >= 0
	item.calc.service_days_left < limits.near.value
}
