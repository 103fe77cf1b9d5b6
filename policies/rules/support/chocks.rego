# METADATA
# title: Wheel on the floor without chocks
# description: |
#   With the driveline out no gear holds the car, and one pull rolls it off its
#   stands on the wheels that are still down.
# related_resources:
#   - ref: hse-motor-vehicle-repair
#     description: wheels left on the ground are chocked
# custom:
#   level: danger
#   subject: support
#   stages: [raised, hoisting, out_raised]
#   message: "on the floor and not chocked: {wheels}"
#   figures:
#     wheels: {dimension: text}
#   fix: chock each wheel that stays down, on both sides
#   caution: do not raise the car and do not go under it before its wheels are chocked
#   rulebook: workshop
#   confidence: published
#   basis: hazard
#   waivable: false
package rules.support.chocks

judges contains {"subject": support.path, "needs": ["wheels_down"]} if some support in input.support

judges contains {"subject": support.path, "needs": ["chocked"]} if {
	some support in input.support
	support.wheels_down
}

findings contains {
	"subject": support.path,
	"at": "chocked",
	"figures": {"wheels": concat(", ", support.unchocked)},
} if {
	some support in input.support
	some _ in support.unchocked
}
