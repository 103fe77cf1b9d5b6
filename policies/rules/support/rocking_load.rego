# METADATA
# title: Stand over its rating when the car rocks
# description: |
#   On a stiff car and a hard floor four stands never share evenly. Where one is a
#   little low the car rests on three, and two across a diagonal carry nearly all.
# related_resources:
#   - ref: statics
#     description: the highest reaction that four supports allow in equilibrium
# custom:
#   level: fault
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "{subject} carries up to {load} if the car rests on three stands; it is rated for {capacity}"
#   figures:
#     load: {dimension: mass, like: kind.rated}
#     capacity: {dimension: mass, like: kind.rated}
#   fix: use stands rated for this load, and shim them until all four carry
#   rulebook: workshop
#   confidence: practice
package rules.support.rocking_load

judges contains {"subject": stand.path, "needs": ["calc.rocking", "calc.capacity"]} if some stand in input.stands

findings contains {
	"subject": stand.path,
	"at": "stand",
	"figures": {"load": stand.calc.rocking, "capacity": stand.calc.capacity},
} if {
	some stand in input.stands
	stand.calc.rocking > stand.calc.capacity
}
