# METADATA
# title: Brake fluid that attacks the seals
# description: |
#   Brake seals are made for glycol fluid or for mineral oil. The wrong one
#   swells them within hours to days; the pistons stick, and then the brakes
#   are gone.
# related_resources:
#   - ref: 49-cfr-571.116
#     description: "S4: which rubbers a brake fluid may meet; mineral oil is for systems without them"
#   - ref: seal-maker-guide
#     description: EPDM for glycol fluid, attacked by mineral oil; nitrile the other way round
# custom:
#   level: danger
#   subject: brakes
#   stages: [joined, filled, first_start, event]
#   message: "the brakes hold {fluid} fluid, and their seals are {seals}"
#   figures:
#     fluid: {dimension: text}
#     seals: {dimension: text}
#   fix: replace the fluid and every seal, hose and cylinder rubber that it has touched
#   caution: do not move the car under power; the brakes may fail without warning
#   rulebook: workshop
#   confidence: published
#   basis: hazard
package rules.brakes.fluid_kind

glycol := {"DOT 3", "DOT 4", "DOT 5.1"}

glycol_rubbers := {"EPDM", "SBR", "natural-rubber"}

judges contains {"subject": brakes.path, "needs": ["fluid", "seals"]} if some brakes in input.brakes

findings contains {"subject": brakes.path, "at": "fluid", "figures": {"fluid": brakes.fluid, "seals": brakes.seals}} if {
	some brakes in input.brakes
	brakes.fluid == "mineral"
	brakes.seals in glycol_rubbers
}

findings contains {"subject": brakes.path, "at": "fluid", "figures": {"fluid": brakes.fluid, "seals": brakes.seals}} if {
	some brakes in input.brakes
	brakes.fluid in glycol
	brakes.seals == "nitrile"
}
