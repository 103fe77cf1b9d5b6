# METADATA
# title: Pin fed through a thinner wire than the one behind it
# description: |
#   Whoever made the driveline's loom chose the wire for what the pin carries.
#   A thinner one on the car's side of the plug is the first to get warm,
#   inside its own bundle.
# related_resources:
#   - ref: common-practice
#     description: the wires on both sides of a plug are of one size
# custom:
#   level: advice
#   subject: pins
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has {here} wire on the car's side and {there} on the driveline's"
#   figures:
#     here: {dimension: area, like: here.wire}
#     there: {dimension: area, like: there.wire}
#   fix: run a wire of the same size, or prove by load, length and bundle that the thinner one bears it
#   rulebook: workshop
#   confidence: practice
package rules.electrics.pin_wire

judges contains {"subject": pin.path, "needs": ["here.wire"]} if {
	some pin in input.pins
	pin.here
	pin.there.wire
}

# Of a pin that carries a signal nobody writes the wire.
judges contains {"subject": pin.path, "needs": []} if some pin in input.pins

findings contains {
	"subject": pin.path,
	"at": "here.wire",
	"also": [pin.there.path],
	"figures": {"here": pin.here.wire, "there": pin.there.wire},
} if {
	some pin in input.pins
	pin.here.wire < pin.there.wire
}
