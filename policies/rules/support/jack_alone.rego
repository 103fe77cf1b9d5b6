# METADATA
# title: Car held up by a jack or hoist alone
# description: |
#   Jacks and hoists lift; they do not hold. A seal, a valve or a hook lets go
#   without a sound, and nothing is left under the car.
# related_resources:
#   - ref: hse-indg434
#     description: nobody works under a car that only jacks hold
# custom:
#   level: danger
#   subject: support
#   stages: [raised, hoisting, out_raised]
#   message: "nothing holds the car but {held}: there is no stand under it"
#   figures:
#     held: {dimension: text}
#   fix: let the car down on stands under its structure before anybody works at it
#   caution: keep out from under the car
#   rulebook: workshop
#   confidence: published
#   basis: hazard
#   waivable: false
package rules.support.jack_alone

judges contains {"subject": support.path, "needs": ["stands", "held_by"]} if some support in input.support

# A frame that carries the car where the driveline was counts as a stand.
findings contains {"subject": support.path, "at": "held_by", "figures": {"held": held}} if {
	some support in input.support
	support.stands == []
	not support.frame
	some held in support.held_by
	lifts(held)
}

lifts(thing) if contains(lower(thing), "jack")

lifts(thing) if contains(lower(thing), "hoist")

lifts(thing) if contains(lower(thing), "crane")
