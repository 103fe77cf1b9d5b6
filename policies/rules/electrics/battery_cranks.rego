# METADATA
# title: Battery too weak for the starter
# description: |
#   The battery stays with the car and the starter comes with the driveline.
#   One that cannot give what the starter draws drops the voltage, and the
#   engine computer resets while the engine turns.
# related_resources:
#   - ref: common-practice
#     description: cranking current of the battery against that of the starter
# custom:
#   level: fault
#   subject: electrics
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the battery gives {gives} to crank with; the starter draws {draws}"
#   figures:
#     gives: {dimension: current, like: battery.cranks}
#     draws: {dimension: current, like: battery.cranks}
#   fix: fit the battery that suits the driveline, or start from a second one in parallel
#   rulebook: workshop
#   confidence: practice
package rules.electrics.battery_cranks

judges contains {"subject": electric.path, "needs": ["battery.cranks", "engine.cranking"]} if some electric in input.electrics

findings contains {
	"subject": electric.path,
	"at": "battery.cranks",
	"also": [electric.engine.path],
	"figures": {"gives": electric.battery.cranks, "draws": electric.engine.cranking},
} if {
	some electric in input.electrics
	electric.battery.cranks < electric.engine.cranking
}
