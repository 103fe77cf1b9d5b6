# METADATA
# title: Hand extinguisher that flies, or that nobody reaches
# description: |
#   In a crash a bottle is a missile unless two metal straps hold it; and one
#   that the belted driver cannot reach might as well be in the van.
# related_resources:
#   - ref: fia-253
#     description: "art. 7.3: two metal straps with quick release; within reach of the belted driver"
#   - ref: motorsport-uk-ncr
#     description: chapter 7 appendix 6 art. 3.5 to 3.9
# custom:
#   cases:
#     straps:
#       level: fault
#       message: "the hand extinguisher is held by {straps} metal strap; two are asked"
#     reach:
#       level: fault
#       message: the belted driver does not reach the hand extinguisher
#   subject: cars
#   stages: [event]
#   figures:
#     straps: {dimension: number}
#   fix: mount it with two quick-release metal straps on a bracket of its own, where the belted driver reaches it
#   rulebook: appendix-j
#   confidence: published
package rules.fire.hand_fixing

judges contains {
	"subject": car.path,
	"needs": ["safety.hand_extinguisher.straps", "safety.hand_extinguisher.reachable_belted"],
} if {
	some car in input.cars
}

findings contains {
	"subject": car.path,
	"at": "safety.hand_extinguisher.straps",
	"case": "straps",
	"figures": {"straps": car.safety.hand_extinguisher.straps},
} if {
	some car in input.cars
	car.safety.hand_extinguisher.straps < 2
}

findings contains {
	"subject": car.path,
	"at": "safety.hand_extinguisher.reachable_belted",
	"case": "reach",
	"figures": {},
} if {
	some car in input.cars
	car.safety.hand_extinguisher.reachable_belted == false
}
