# METADATA
# title: Cooler smaller than the driveline asks
# description: |
#   Radiator and coolers stay with the car and the heat comes with the
#   driveline. On short runs the warming of metal, water and oil carries much
#   of it, so a cooler that sheds less than the driveline gives off at full
#   power is advice, not a fault.
# related_resources:
#   - ref: common-practice
#     description: heat shed at speed against heat that the driveline gives off
# custom:
#   level: advice
#   subject: coolers
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the {cooler} sheds {sheds}; the driveline gives it {heat}"
#   figures:
#     cooler: {dimension: text}
#     sheds: {dimension: power, like: sheds}
#     heat: {dimension: power, like: sheds}
#   fix: fit the larger cooler or better ducting, or watch the temperature and keep the runs short
#   rulebook: workshop
#   confidence: practice
#   formerly: [coolant.radiator_heat, oil.cooler_heat]
package rules.coolant.heat_shed

judges contains {"subject": cooler.path, "needs": ["needs.heat_coolant", "sheds"]} if {
	some cooler in input.coolers
	cooler.kind == "radiator"
}

judges contains {"subject": cooler.path, "needs": ["needs.heat_oil", "sheds"]} if {
	some cooler in input.coolers
	cooler.kind == "oil cooler"
}

judges contains {"subject": cooler.path, "needs": ["needs.heat_gearbox", "sheds"]} if {
	some cooler in input.coolers
	cooler.kind == "gearbox cooler"
}

findings contains {
	"subject": cooler.path,
	"at": "sheds",
	"figures": {"cooler": cooler.kind, "sheds": cooler.sheds, "heat": cooler.needs.heat_coolant},
} if {
	some cooler in input.coolers
	cooler.kind == "radiator"
	cooler.sheds < cooler.needs.heat_coolant
}

findings contains {
	"subject": cooler.path,
	"at": "sheds",
	"figures": {"cooler": cooler.kind, "sheds": cooler.sheds, "heat": cooler.needs.heat_oil},
} if {
	some cooler in input.coolers
	cooler.kind == "oil cooler"
	cooler.sheds < cooler.needs.heat_oil
}

findings contains {
	"subject": cooler.path,
	"at": "sheds",
	"figures": {"cooler": cooler.kind, "sheds": cooler.sheds, "heat": cooler.needs.heat_gearbox},
} if {
	some cooler in input.coolers
	cooler.kind == "gearbox cooler"
	cooler.sheds < cooler.needs.heat_gearbox
}
