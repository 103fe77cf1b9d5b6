# METADATA
# title: Gearbox under the engine's torque
# description: |
#   Gears that are loaded past their rating pit and then break, most often in the
#   lower gears and at the start.
# related_resources:
#   - ref: common-practice
#     description: the maker's rating against peak torque with the margin that it asks for
# custom:
#   level: fault
#   subject: gearbox
#   stages: [trial_fit, joined, filled, first_start, event, hanging]
#   message: "the engine asks {asked} of a gearbox rated for {rated}"
#   figures:
#     asked: {dimension: torque, like: engine.torque}
#     rated: {dimension: torque, like: rated}
#   fix: limit the torque in the map, or fit a stronger gearbox
#   rulebook: workshop
#   confidence: practice
package rules.driveline.gearbox_rating

judges contains {"subject": gearbox.path, "needs": ["calc.asked", "rated"]} if some gearbox in input.gearbox

findings contains {
	"subject": gearbox.path,
	"at": "rated",
	"figures": {"asked": gearbox.calc.asked, "rated": gearbox.rated},
} if {
	some gearbox in input.gearbox
	gearbox.calc.asked > gearbox.rated
}
