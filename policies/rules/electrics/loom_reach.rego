# METADATA
# title: Loom too short for its plug
# description: |
#   A plug that only just reaches hangs on its wires: each knock pulls at the
#   crimps, and one day the engine stops. The tail of each half was cut for
#   the place that it had in another car.
# related_resources:
#   - ref: common-practice
#     description: loom tails of both halves against the distance between them
# custom:
#   level: fault
#   subject: looms
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has to reach {distance}, straight; both tails together are {reach}"
#   figures:
#     reach: {dimension: length, like: tail}
#     distance: {dimension: length, like: tail}
#   fix: move the half that is clipped to the car, or make an extension loom
#   rulebook: workshop
#   confidence: practice
package rules.electrics.loom_reach

judges contains {"subject": loom.path, "needs": ["calc.reach", "calc.distance"]} if some loom in input.looms

findings contains {
	"subject": loom.path,
	"at": "tail",
	"also": [loom.port.path],
	"figures": {"reach": loom.calc.reach, "distance": loom.calc.distance},
} if {
	some loom in input.looms
	loom.calc.reach < loom.calc.distance
}
