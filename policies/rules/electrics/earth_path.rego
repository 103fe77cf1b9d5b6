# METADATA
# title: Engine without an earth strap
# description: |
#   Without a strap the starter's current looks for another way back: through a
#   cable sheath, a braided fuel hose or a bearing.
# related_resources:
#   - ref: common-practice
#     description: the engine is earthed to the chassis or the battery by a strap of its own
# custom:
#   level: fault
#   subject: electrics
#   stages: [joined, filled, first_start, event]
#   message: "no earth goes from the driveline to the car"
#   figures: {}
#   fix: fit a strap as thick as the starter cable between engine and chassis, or engine and battery
#   rulebook: workshop
#   confidence: practice
package rules.electrics.earth_path

judges contains {"subject": electric.path, "needs": ["earths"]} if some electric in input.electrics

findings contains {"subject": electric.path, "figures": {}} if {
	some electric in input.electrics
	electric.earths == []
}
