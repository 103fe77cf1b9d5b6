# METADATA
# title: Cage tube that was not cold drawn
# description: |
#   The rules ask for seamless cold-drawn tube. A seam opens when the tube is
#   bent or crushed along it, and hot-finished tube has another strength than
#   the one that the sizes were listed for.
# related_resources:
#   - ref: fia-253
#     description: art. 8.3.3, cold-drawn seamless unalloyed carbon steel
#   - ref: motorsport-uk-ncr
#     description: chapter 7 appendix 3 art. 20.1
# custom:
#   cases:
#     main:
#       level: fault
#       message: "the main hoop is of {made} tube; the rules ask for cold-drawn"
#     other:
#       level: fault
#       message: "other members of the cage are of {made} tube; the rules ask for cold-drawn"
#   subject: cars
#   stages: [event]
#   figures:
#     made: {dimension: text}
#   fix: find the mill certificate; if the tube is not cold drawn, have the cage replaced
#   rulebook: appendix-j
#   confidence: published
package rules.cage.tube_made

judges contains {"subject": car.path, "needs": ["cage.main_tube.made", "cage.other_tube.made"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "cage.main_tube",
	"case": "main",
	"figures": {"made": car.cage.main_tube.made},
} if {
	some car in input.cars
	car.cage.main_tube.made != "cold-drawn"
}

findings contains {
	"subject": car.path,
	"at": "cage.other_tube",
	"case": "other",
	"figures": {"made": car.cage.other_tube.made},
} if {
	some car in input.cars
	car.cage.other_tube.made != "cold-drawn"
}
