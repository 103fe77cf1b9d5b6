# METADATA
# title: No extinguisher in the workshop
# description: |
#   Opened fuel lines, a battery and a hot lamp are a fire that waits. The
#   car's own system is pinned while it is worked on, so the bottle on the
#   wall is the only one.
# related_resources:
#   - ref: common-practice
#     description: an extinguisher for fuel fires within reach of the work
# custom:
#   level: fault
#   subject: shops
#   stages: [raised, hoisting, joined, filled, first_start]
#   message: no extinguisher is within reach of the work
#   fix: hang a foam or powder extinguisher between the car and the door, and know how it works
#   rulebook: workshop
#   confidence: practice
package rules.fire.bench_bottle

judges contains {"subject": shop.path, "needs": ["extinguisher"]} if some shop in input.shops

findings contains {"subject": shop.path, "at": "extinguisher", "figures": {}} if {
	some shop in input.shops
	"extinguisher" in shop.none
}
