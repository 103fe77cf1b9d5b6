# METADATA
# title: Ballast that nothing holds
# description: |
#   Ballast is dense and small. In a crash an unfastened piece flies through
#   the cockpit, and at any other time it wanders under the pedals.
# related_resources:
#   - ref: common-practice
#     description: ballast is bolted to the structure
# custom:
#   level: danger
#   subject: ballast
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "nothing holds {subject}"
#   fix: bolt it to the floor or a chassis member through plates, with tools needed to undo it
#   caution: do not move the car with it in
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.ballast.loose

judges contains {"subject": piece.path, "needs": ["bolts"]} if some piece in input.ballast

findings contains {"subject": piece.path, "at": "bolts", "figures": {}} if {
	some piece in input.ballast
	"bolts" in piece.none
}
