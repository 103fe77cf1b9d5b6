# METADATA
# title: Stand that a pull on a bar topples
# description: |
#   Stands are pushed over sideways more often than they are crushed. The less a
#   stand carries, the less it takes: as the driveline leaves, its rating looks
#   better and its footing gets worse.
# related_resources:
#   - ref: us-army-tb-43-0156
#     description: the car is not rocked once it has settled on its stands
#   - ref: statics
#     description: push at the saddle against load and reach of the base
#   - ref: as-2615
#     description: most effort asked of a person at a jack's handle
# custom:
#   level: advice
#   subject: stands
#   stages: [raised, hoisting, out_raised]
#   message: "a push of {push} at the saddle topples {subject} when it carries least; a person pulls {pull}"
#   figures:
#     push: {dimension: force}
#     pull: {dimension: force}
#   fix: set it lower, use one with a wider base, or loosen tight fasteners before the car is raised
#   rulebook: workshop
#   confidence: practice
package rules.support.light_stand

import data.rules.support.limits.light_stand as limits

judges contains {"subject": stand.path, "needs": ["calc.push"]} if some stand in input.stands

findings contains {
	"subject": stand.path,
	"at": "stand",
	"figures": {"push": stand.calc.push, "pull": limits.pull.value},
} if {
	some stand in input.stands
	stand.calc.push < limits.pull.value
}
