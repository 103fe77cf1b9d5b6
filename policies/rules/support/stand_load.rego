# METADATA
# title: Stand over its rating
# description: |
#   The load on each stand changes while the driveline hangs on the hoist and when
#   it is out. The highest of them counts, against what one stand alone is rated
#   for.
# related_resources:
#   - ref: hse-motor-vehicle-repair
#     description: never above the rated capacity
#   - ref: asme-pase
#     description: rated capacity is the highest load to be supported
# custom:
#   level: danger
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "{subject} carries up to {load}; one stand of its kind is rated for {capacity}"
#   figures:
#     load: {dimension: mass, like: kind.rated}
#     capacity: {dimension: mass, like: kind.rated}
#   fix: use stands with a higher rating for each, or move them so that they share the load
#   caution: keep out from under the car; a stand over its rating may fold without warning
#   rulebook: workshop
#   confidence: published
#   basis: threshold
#   waivable: false
package rules.support.stand_load

judges contains {"subject": stand.path, "needs": ["calc.load_most", "calc.capacity"]} if some stand in input.stands

findings contains {
	"subject": stand.path,
	"at": "stand",
	"figures": {"load": stand.calc.load_most, "capacity": stand.calc.capacity},
} if {
	some stand in input.stands
	stand.calc.load_most > stand.calc.capacity
}
