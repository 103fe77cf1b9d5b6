# METADATA
# title: Sensor that the map expects and nobody fitted
# description: |
#   A map that reads a sensor which is not there runs on a stand-in value, or
#   shuts the engine down at the first corner.
# related_resources:
#   - ref: common-practice
#     description: every sensor of the map is fitted, on the driveline or on this car
# custom:
#   level: fault
#   subject: expected_sensors
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the map expects {sensor} on the {on}, and it is not there"
#   figures:
#     sensor: {dimension: text}
#     on: {dimension: text}
#   fix: fit the sensor, or have the map changed so that it does without
#   rulebook: workshop
#   confidence: practice
package rules.tune.sensors_present

judges contains {"subject": sensor.path, "needs": ["present"]} if some sensor in input.expected_sensors

findings contains {"subject": sensor.path, "figures": {"sensor": sensor.name, "on": sensor.on}} if {
	some sensor in input.expected_sensors
	sensor.present == false
}
