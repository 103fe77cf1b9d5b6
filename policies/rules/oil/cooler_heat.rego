# METADATA
# title: Oil cooler smaller than the driveline asks
# description: |
#   The cooler stays with the car and the heat comes with the driveline. A
#   cooler that sheds less than the engine puts into its oil ends the run
#   early; on short runs the mass of the oil may carry it, so this is advice.
# related_resources:
#   - ref: common-practice
#     description: heat shed at speed against heat that the driveline gives off
# custom:
#   level: advice
#   subject: oil
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the oil cooler sheds {sheds}; the driveline gives its oil {heat}"
#   figures:
#     sheds: {dimension: power, like: cooler.sheds}
#     heat: {dimension: power, like: needs.heat_oil}
#   fix: fit the larger cooler or better ducting, or watch the oil temperature and keep the runs short
#   rulebook: workshop
#   confidence: practice
package rules.oil.cooler_heat

judges contains {"subject": oil.path, "needs": ["needs.heat_oil", "cooler.sheds"]} if some oil in input.oil

findings contains {
	"subject": oil.path,
	"at": "cooler.sheds",
	"figures": {"sheds": oil.cooler.sheds, "heat": oil.needs.heat_oil},
} if {
	some oil in input.oil
	oil.cooler.sheds < oil.needs.heat_oil
}
