# METADATA
# title: Stand held by a ratchet alone
# description: |
#   A pawl that sits badly on its tooth slips when the load shifts. Stands of
#   this kind were called back for it by the hundred thousand; a cross pin stops
#   the fall.
# related_resources:
#   - ref: nhtsa-stand-recall
#     description: the pawl may let go when the load shifts
# custom:
#   level: advice
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "only a ratchet locks the height of {subject}"
#   figures: {}
#   fix: use stands with a pin through the post as well, and look in the recall register for these
#   rulebook: workshop
#   confidence: published
package rules.support.stand_lock

judges contains {"subject": stand.path, "needs": ["kind.lock"]} if some stand in input.stands

findings contains {"subject": stand.path, "at": "kind.lock", "figures": {}} if {
	some stand in input.stands
	stand.kind.lock == "ratchet"
}
