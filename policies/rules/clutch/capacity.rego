# METADATA
# title: Clutch that carries less than the engine gives
# description: |
#   A clutch that carries less than the engine's torque slips, heats and
#   burns. The figure is by uniform wear, which is the lower of the two usual
#   models; hot or worn lining carries less again.
# related_resources:
#   - ref: shigley-9e
#     description: chapter 16, disc clutch, uniform wear
# custom:
#   level: fault
#   subject: clutch
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the clutch carries {capacity}; the engine gives {torque}"
#   figures:
#     capacity: {dimension: torque}
#     torque: {dimension: torque}
#   fix: fit a cover with more clamp load, another plate or another lining
#   rulebook: workshop
#   confidence: published
package rules.clutch.capacity

judges contains {"subject": clutch.path, "needs": ["calc.capacity", "calc.engine_torque"]} if {
	some clutch in input.clutch
}

findings contains {
	"subject": clutch.path,
	"at": "slave.clamp",
	"figures": {"capacity": clutch.calc.capacity, "torque": clutch.calc.engine_torque},
} if {
	some clutch in input.clutch
	clutch.calc.capacity < clutch.calc.engine_torque
}
