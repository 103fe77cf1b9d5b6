# METADATA
# title: Fan that starts before the thermostat opens
# description: |
#   A fan that starts below the temperature at which the thermostat opens runs
#   all day, and the engine never warms. The switch stays with the car, the
#   thermostat comes with the driveline.
# related_resources:
#   - ref: common-practice
#     description: the fan starts above the thermostat
# custom:
#   level: advice
#   subject: cooling
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the fan starts at {on}; the thermostat opens at {opens}"
#   figures:
#     on: {dimension: temperature, like: fan.on_at}
#     opens: {dimension: temperature, like: engine.thermostat}
#   fix: set the fan a good ten degrees above the thermostat, or fit the thermostat that suits the car
#   rulebook: workshop
#   confidence: practice
package rules.coolant.fan_start

judges contains {"subject": cooling.path, "needs": ["fan.on_at", "engine.thermostat"]} if some cooling in input.cooling

findings contains {
	"subject": cooling.path,
	"at": "fan.on_at",
	"also": [cooling.engine.path],
	"figures": {"on": cooling.fan.on_at, "opens": cooling.engine.thermostat},
} if {
	some cooling in input.cooling
	cooling.fan.on_at < cooling.engine.thermostat
}
