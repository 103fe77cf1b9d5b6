# METADATA
# title: Cage tube smaller than the rules list
# description: |
#   The rules list pairs of diameter and wall, in millimetres and in inches,
#   and a tube is held to a pair, not to its stiffness; the smaller of a
#   pair's two forms is taken here. A cage that was homologated or certified
#   with other tubes is what its certificate says; show it to the scrutineer.
# related_resources:
#   - ref: fia-253
#     description: art. 8.3.3, tubes by member
#   - ref: motorsport-uk-ncr
#     description: chapter 7 appendix 3 art. 20.1
# custom:
#   cases:
#     main:
#       level: fault
#       message: "the main hoop is {outer} by {wall}, which is none of the tubes that the rules list for it"
#     other:
#       level: fault
#       message: "other members of the cage are {outer} by {wall}, which is none of the tubes that the rules list for them"
#   subject: cars
#   stages: [event]
#   figures:
#     outer: {dimension: length, like: cage.main_tube.outer|cage.other_tube.outer}
#     wall: {dimension: length, like: cage.main_tube.wall|cage.other_tube.wall}
#   fix: have the member replaced in a listed tube, or take the cage and its certificate to the authority
#   rulebook: appendix-j
#   confidence: published
package rules.cage.tubes

import data.rules.cage.limits.tubes as limits

judges contains {
	"subject": car.path,
	"needs": ["cage.main_tube.outer", "cage.main_tube.wall", "cage.other_tube.outer", "cage.other_tube.wall"],
} if {
	some car in input.cars
}

findings contains {
	"subject": car.path,
	"at": "cage.main_tube",
	"case": "main",
	"figures": {"outer": outer, "wall": wall},
} if {
	some car in input.cars
	outer := car.cage.main_tube.outer
	wall := car.cage.main_tube.wall
	not main(outer, wall)
}

findings contains {
	"subject": car.path,
	"at": "cage.other_tube",
	"case": "other",
	"figures": {"outer": outer, "wall": wall},
} if {
	some car in input.cars
	outer := car.cage.other_tube.outer
	wall := car.cage.other_tube.wall
	not other(outer, wall)
}

main(outer, wall) if {
	outer >= limits.main_thick_outer.value
	wall >= limits.main_thick_wall.value
}

main(outer, wall) if {
	outer >= limits.main_thin_outer.value
	wall >= limits.main_thin_wall.value
}

other(outer, wall) if {
	outer >= limits.other_thick_outer.value
	wall >= limits.other_thick_wall.value
}

other(outer, wall) if {
	outer >= limits.other_thin_outer.value
	wall >= limits.other_thin_wall.value
}
