# METADATA
# title: Gear that nobody has looked over
# description: |
#   A chain with a stretched link, a jack that sinks and a wrench that clicks
#   late look as they always did. Where lifting is work the law asks for
#   thorough examination, of slings each half year and of hoists each year; at
#   home it is good sense.
# related_resources:
#   - ref: hse-indg422
#     description: slings every 6 months, other lifting equipment every 12 months
#   - ref: common-practice
#     description: stands, jacks and torque wrenches once a year
# custom:
#   level: advice
#   subject: gear
#   stages: [raised, hoisting, out_raised]
#   message: "{subject}, a {kind}, was last looked over {age} ago; {most} is usual"
#   figures:
#     kind: {dimension: text}
#     age: {dimension: age}
#     most: {dimension: age}
#   fix: have it examined, or calibrated, and write down the day
#   rulebook: workshop
#   confidence: practice
package rules.service.gear_checked

import data.rules.service.limits.gear_checked as limits

yearly := {"hoist", "stand", "jack", "torque wrench"}

# A lift point has its limit on it and no date.
judges contains {"subject": thing.path, "needs": ["calc.age"]} if {
	some thing in input.gear
	thing.kind != "lift point"
}

findings contains {
	"subject": thing.path,
	"figures": {"kind": thing.kind, "age": thing.calc.age, "most": limits.sling.value},
} if {
	some thing in input.gear
	thing.kind == "sling"
	thing.calc.age > limits.sling.value
}

findings contains {
	"subject": thing.path,
	"figures": {"kind": thing.kind, "age": thing.calc.age, "most": limits.other.value},
} if {
	some thing in input.gear
	thing.kind in yearly
	thing.calc.age > limits.other.value
}
