# METADATA
# title: Radiator smaller than the driveline asks
# description: |
#   The radiator stays with the car and the heat comes with the driveline. On
#   short runs the warming of metal and water carries much of it, so a
#   radiator that sheds less than the engine gives off at full power is
#   advice, not a fault.
# related_resources:
#   - ref: common-practice
#     description: heat shed at speed against heat that the driveline gives off
# custom:
#   level: advice
#   subject: cooling
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the radiator sheds {sheds}; the driveline gives its coolant {heat}"
#   figures:
#     sheds: {dimension: power, like: radiator.sheds}
#     heat: {dimension: power, like: needs.heat_coolant}
#   fix: fit the larger radiator or better ducting, or watch the water temperature and keep the runs short
#   rulebook: workshop
#   confidence: practice
package rules.coolant.radiator_heat

judges contains {"subject": cooling.path, "needs": ["needs.heat_coolant", "radiator.sheds"]} if {
	some cooling in input.cooling
}

findings contains {
	"subject": cooling.path,
	"at": "radiator.sheds",
	"figures": {"sheds": cooling.radiator.sheds, "heat": cooling.needs.heat_coolant},
} if {
	some cooling in input.cooling
	cooling.radiator.sheds < cooling.needs.heat_coolant
}
