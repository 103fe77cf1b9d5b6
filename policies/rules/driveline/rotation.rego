# METADATA
# title: Engine that turns against the axle
# description: |
#   An engine that turns the other way, or an axle that is turned round, gives one
#   gear forwards and all the others backwards.
# related_resources:
#   - ref: common-practice
#     description: both seen from the front, through a gearbox that keeps the sense of rotation
# custom:
#   level: fault
#   subject: gearbox
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the engine turns {engine} and the axle wants {axle}, both seen from the front"
#   figures:
#     engine: {dimension: text}
#     axle: {dimension: text}
#   fix: have the crown wheel moved to the other side, or use an axle made for this engine
#   rulebook: workshop
#   confidence: practice
package rules.driveline.rotation

judges contains {"subject": gearbox.path, "needs": ["engine.rotation", "final_drive.turns"]} if {
	some gearbox in input.gearbox
}

findings contains {
	"subject": gearbox.path,
	"at": "engine.rotation",
	"also": [gearbox.final_drive.path],
	"figures": {"engine": gearbox.engine.rotation, "axle": gearbox.final_drive.turns},
} if {
	some gearbox in input.gearbox
	gearbox.engine.rotation != gearbox.final_drive.turns
}
