# METADATA
# title: Part of bare aluminium in methanol
# description: |
#   A tank, pump, filter or regulator of bare aluminium holds more methanol than
#   any union, and for longer: all the time between events. The metal goes to a
#   jelly, and what comes off it ends in the jets.
# related_resources:
#   - ref: sae-930447
#     description: coatings and metals in methanol
# custom:
#   level: fault
#   subject: fuel_parts
#   stages: [joined, filled, first_start, event]
#   message: "{subject} is of bare {metal}, and methanol is in the tank"
#   figures:
#     metal: {dimension: text}
#   fix: change it for one that is anodised, plated or of stainless, or that its maker approves for methanol; drain it after each event
#   rulebook: workshop
#   confidence: published
package rules.fuel.methanol_part

bare := {"aluminium", "cast-aluminium"}

# Which fuel it is, of a part that is approved for another.
judges contains {"subject": part.path, "needs": ["fuel"]} if some part in input.fuel_parts

judges contains {"subject": part.path, "needs": ["metal"]} if {
	some part in input.fuel_parts
	part.fuel == "methanol"
	count({fuel | some fuel in part.approved_for; fuel == "methanol"}) == 0
}

findings contains {"subject": part.path, "at": "metal", "figures": {"metal": part.metal}} if {
	some part in input.fuel_parts
	part.fuel == "methanol"
	count({fuel | some fuel in part.approved_for; fuel == "methanol"}) == 0
	part.metal in bare
}
