# METADATA
# title: Manifold sensor of another range
# description: |
#   The sensor's voltage means another pressure than the map thinks, so fuel,
#   spark and boost limit are all wrong together. The sensor is the one that the
#   map calls manifold or map.
# related_resources:
#   - ref: common-practice
#     description: the map holds the range of the sensor that is fitted
# custom:
#   level: fault
#   subject: expected_sensors
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the map reads {sensor} as {map_low} to {map_high}; the one fitted goes from {low} to {high}"
#   figures:
#     sensor: {dimension: text}
#     map_low: {dimension: absolute_pressure, like: tune.manifold}
#     map_high: {dimension: absolute_pressure, like: tune.manifold}
#     low: {dimension: absolute_pressure, like: sensor.range_absolute}
#     high: {dimension: absolute_pressure, like: sensor.range_absolute}
#   fix: fit a sensor of the map's range, or enter the fitted one's range in the map
#   rulebook: workshop
#   confidence: practice
package rules.tune.manifold_range

called := {"manifold", "map"}

judges contains {"subject": sensor.path, "needs": ["tune.manifold", "sensor.range_absolute"]} if {
	some sensor in input.expected_sensors
	sensor.name in called
}

findings contains {
	"subject": sensor.path,
	"figures": {
		"sensor": sensor.name,
		"map_low": sensor.tune.manifold[0],
		"map_high": sensor.tune.manifold[1],
		"low": sensor.sensor.range_absolute[0],
		"high": sensor.sensor.range_absolute[1],
	},
} if {
	some sensor in input.expected_sensors
	sensor.name in called
	sensor.tune.manifold != sensor.sensor.range_absolute
}
