# METADATA
# title: One reservoir, two fluids
# description: |
#   Where brakes and clutch drink from one reservoir they share its fluid. A
#   driveline whose clutch was built for another family of fluid brings the
#   wrong one into the brakes, and their seals are gone within days.
# related_resources:
#   - ref: 49-cfr-571.116
#     description: "S4: which rubbers a brake fluid may meet; mineral oil is for systems without them"
#   - ref: seal-maker-guide
#     description: glycol fluid and mineral oil each attack the seals made for the other
# custom:
#   level: danger
#   subject: brakes
#   stages: [joined, filled, first_start, event]
#   message: "brakes and clutch share a reservoir; the brakes want {brakes} and the clutch {clutch}"
#   figures:
#     brakes: {dimension: text}
#     clutch: {dimension: text}
#   fix: give the clutch a reservoir of its own, or bring its seals and fluid into line with those of the brakes; flush whatever the wrong fluid has touched
#   caution: do not drive it; the brakes may fail without warning
#   rulebook: workshop
#   confidence: published
#   basis: hazard
package rules.brakes.shared_reservoir

glycol := {"DOT 3", "DOT 4", "DOT 5.1"}

judges contains {"subject": brakes.path, "needs": ["fluid", "clutch.fluid"]} if some brakes in input.brakes

judges contains {"subject": brakes.path, "needs": ["reservoir"]} if {
	some brakes in input.brakes
	apart(brakes.fluid, brakes.clutch.fluid)
}

findings contains {
	"subject": brakes.path,
	"at": "reservoir",
	"also": [brakes.clutch.path],
	"figures": {"brakes": brakes.fluid, "clutch": brakes.clutch.fluid},
} if {
	some brakes in input.brakes
	brakes.reservoir
	apart(brakes.fluid, brakes.clutch.fluid)
}

# Glycol fluids mix with one another; neither of the other kinds mixes with any.
apart(one, other) if {
	one != other
	not one in glycol
}

apart(one, other) if {
	one != other
	not other in glycol
}
