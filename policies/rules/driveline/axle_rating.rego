# METADATA
# title: Axle under the torque of the lowest gear
# description: |
#   The axle gets the engine's torque multiplied by the lowest gear. A stronger
#   driveline breaks the axle of a car that was built for a weaker one. A clutch
#   or a tyre that slips first limits it, and is not counted here.
# related_resources:
#   - ref: common-practice
#     description: the maker's rating against peak torque in the lowest gear
# custom:
#   level: fault
#   subject: gearbox
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{torque} reach an axle whose input is rated for {rated}"
#   figures:
#     torque: {dimension: torque, like: engine.torque}
#     rated: {dimension: torque, like: final_drive.rated}
#   fix: limit the torque in the lowest gear, or fit a stronger axle
#   rulebook: workshop
#   confidence: practice
package rules.driveline.axle_rating

judges contains {"subject": gearbox.path, "needs": ["calc.axle_torque", "final_drive.rated"]} if {
	some gearbox in input.gearbox
}

findings contains {
	"subject": gearbox.path,
	"at": "final_drive.rated",
	"also": [gearbox.final_drive.path],
	"figures": {"torque": gearbox.calc.axle_torque, "rated": gearbox.final_drive.rated},
} if {
	some gearbox in input.gearbox
	gearbox.calc.axle_torque > gearbox.final_drive.rated
}
