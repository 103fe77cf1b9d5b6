# METADATA
# title: Cage without padding by the helmet
# description: |
#   In a crash the belts stretch and the helmet reaches tubes that seemed far
#   away. Bare steel breaks helmets; foam made for pipes does nothing.
# related_resources:
#   - ref: fia-253
#     description: art. 8.3.5, padding of the tubes that the helmet could reach, to FIA 8857-2001
# custom:
#   cases:
#     bare:
#       level: fault
#       message: nothing pads the cage where the helmet can reach it
#     unmarked:
#       level: advice
#       message: "the cage is padded with {padding}; the rules name FIA 8857-2001"
#   subject: cars
#   stages: [event]
#   figures:
#     padding: {dimension: text}
#   fix: fit padding of the standard on every tube that the belted driver can reach with the helmet
#   rulebook: appendix-j
#   confidence: practice
package rules.cage.padding

judges contains {"subject": car.path, "needs": ["cage.padding"]} if some car in input.cars

findings contains {"subject": car.path, "at": "cage.padding", "case": "bare", "figures": {}} if {
	some car in input.cars
	"padding" in car.cage.none
}

findings contains {
	"subject": car.path,
	"at": "cage.padding",
	"case": "unmarked",
	"figures": {"padding": car.cage.padding},
} if {
	some car in input.cars
	padding := car.cage.padding
	not contains(padding, "8857")
}
