# METADATA
# title: Harness bolt that holds something else as well
# description: |
#   A bolt that also holds the cage or the seat gets loads that the harness
#   anchor was not made for, and is loosened whenever the other part comes off.
#   A belt that hangs on the seat goes where the seat goes.
# related_resources:
#   - ref: fia-253
#     description: "art. 6.2: belts are not anchored to the seat or its supports"
#   - ref: motorsport-australia-i
#     description: "art. 2: a harness bolt does not hold the cage to the shell"
# custom:
#   level: fault
#   subject: cars
#   stages: [event]
#   message: "a harness anchor bolt also holds the {other}"
#   figures:
#     other: {dimension: text}
#   fix: give each strap an anchor of its own, with its plate
#   rulebook: workshop
#   confidence: published
package rules.safety.harness_anchor

judges contains {"subject": car.path, "needs": ["safety.harness.anchors_shared_with"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "safety.harness.anchors_shared_with",
	"figures": {"other": other},
} if {
	some car in input.cars
	some other in car.safety.harness.anchors_shared_with
	structure(other)
}

structure(name) if contains(lower(name), "cage")

structure(name) if contains(lower(name), "seat")
