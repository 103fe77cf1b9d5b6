# METADATA
# title: Gear lever with less travel than the gearbox
# description: |
#   The lever stays with the car, the gearbox comes with the driveline. A
#   lever that moves its foot less than the selector wants leaves gears half
#   in, and they jump out under load.
# related_resources:
#   - ref: common-practice
#     description: travel at the foot of the lever against the stroke of the selector
# custom:
#   level: fault
#   subject: rods
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the lever moves {subject} by {throw}; the gearbox asks for {stroke}"
#   figures:
#     throw: {dimension: length, like: lever.throw}
#     stroke: {dimension: length, like: port.stroke}
#   fix: move the pivot or the foot of the lever until it gives the stroke, and try every gear with the engine rocked both ways
#   rulebook: workshop
#   confidence: practice
package rules.driveline.shift_travel

judges contains {"subject": rod.path, "needs": ["lever.throw", "port.stroke"]} if {
	some rod in input.rods
	rod.lever
}

# Any other rod or cable does not come from the gear lever.
judges contains {"subject": rod.path, "needs": ["from.port", "to.port"]} if some rod in input.rods

findings contains {
	"subject": rod.path,
	"at": "lever.throw",
	"also": [rod.port.path],
	"figures": {"throw": rod.lever.throw, "stroke": rod.port.stroke},
} if {
	some rod in input.rods
	rod.lever.throw < rod.port.stroke
}
