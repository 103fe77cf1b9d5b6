# METADATA
# title: Car stored on hubs without their shafts
# description: |
#   Where the drive shaft's nut clamps the wheel bearing, the bearing comes apart
#   under the car's weight once the shaft is out, even at walking pace.
# related_resources:
#   - ref: car-makers-wheel-bearing
#     description: the car is not stood on or moved on its wheels without the shafts
# custom:
#   level: fault
#   subject: cars
#   stages: [out_stored]
#   message: "the driveline is out, and a drive shaft clamps the wheel bearings"
#   figures: {}
#   fix: put stub shafts or the old outer joints in the hubs and tighten their nuts before the car is let down
#   rulebook: workshop
#   confidence: published
package rules.driveline.hub_needs_shaft

# On stands the hubs carry nothing yet.
judges contains {"subject": car.path, "needs": ["final_drive.shaft_clamps_hub"]} if {
	some car in input.cars
	not car.stage == "out and raised"
}

findings contains {
	"subject": car.path,
	"at": "final_drive.shaft_clamps_hub",
	"also": [car.final_drive.path],
	"figures": {},
} if {
	some car in input.cars
	not car.stage == "out and raised"
	car.final_drive.shaft_clamps_hub
}
