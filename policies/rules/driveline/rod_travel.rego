# METADATA
# title: Pedal with less travel than what it works
# description: |
#   A pedal that moves its cable or rod by less than the throttle or the clutch asks
#   for gives no full power, or a clutch that never quite frees. It shows at the
#   first start, when everything is together.
# related_resources:
#   - ref: common-practice
#     description: both ends of a rod move alike
# custom:
#   level: fault
#   subject: rods
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the car moves {subject} by {gives}; the driveline asks for {asks}"
#   figures:
#     gives: {dimension: length, like: worked_by.stroke}
#     asks: {dimension: length, like: port.stroke}
#   fix: change the lever's length at one end, and try with the engine rocked that it opens fully and still shuts
#   rulebook: workshop
#   confidence: practice
package rules.driveline.rod_travel

# The gear lever is driveline.shift_travel's.
judges contains {"subject": rod.path, "needs": ["worked_by.stroke"]} if {
	some rod in input.rods
	not rod.lever
	rod.port.stroke
}

judges contains {"subject": rod.path, "needs": ["port.stroke"]} if {
	some rod in input.rods
	not rod.lever
	rod.worked_by.stroke
}

judges contains {"subject": rod.path, "needs": ["from.port", "to.port"]} if some rod in input.rods

findings contains {
	"subject": rod.path,
	"at": "worked_by.stroke",
	"also": [rod.port.path],
	"figures": {"gives": rod.worked_by.stroke, "asks": rod.port.stroke},
} if {
	some rod in input.rods
	not rod.lever
	rod.worked_by.stroke < rod.port.stroke
}
