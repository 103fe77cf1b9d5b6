# METADATA
# title: Paper filter in alcohol
# description: |
#   The resin that stiffens filter paper gives way in fuel with much alcohol;
#   the pleats collapse, or fibres go on to the injectors. A maker's approval
#   of the filter for the fuel settles it.
# related_resources:
#   - ref: common-practice
#     description: metal mesh or glass fibre for fuel with much alcohol
# custom:
#   level: advice
#   subject: fuel_parts
#   stages: [joined, filled, first_start, event]
#   message: "{subject} has an element of {element}, and {fuel} is in the tank"
#   figures:
#     element: {dimension: text}
#     fuel: {dimension: text}
#   fix: fit an element of stainless mesh or glass fibre, and change it again after the first tank
#   rulebook: workshop
#   confidence: practice
package rules.fuel.filter_element

import data.rules.fuel.limits.filter_element as limits

judges contains {"subject": part.path, "needs": ["element", "alcohol"]} if {
	some part in input.fuel_parts
	part.name in {"filter", "strainer"}
}

findings contains {
	"subject": part.path,
	"at": "element",
	"figures": {"element": part.element, "fuel": part.fuel},
} if {
	some part in input.fuel_parts
	part.name in {"filter", "strainer"}
	contains(lower(part.element), "paper")
	part.alcohol > limits.alcohol.value
	count({fuel | some fuel in part.approved_for; fuel == part.fuel}) == 0
}
