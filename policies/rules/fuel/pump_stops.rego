# METADATA
# title: Pump that runs on when the engine stops
# description: |
#   After an impact the engine stops, and a pump that nothing stops empties
#   the tank through whatever line has broken.
# related_resources:
#   - ref: common-practice
#     description: the engine computer, an inertia switch or oil pressure stops the pump
# custom:
#   level: danger
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: nothing stops the fuel pump when the engine stops
#   fix: have the engine computer, an inertia switch or the oil pressure switch the pump off, and prove it
#   caution: do not run it; a broken line is then fed until the battery is flat
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
package rules.fuel.pump_stops

judges contains {"subject": fuel.path, "needs": ["pump.stops"]} if some fuel in input.fuel

findings contains {"subject": fuel.path, "at": "pump.stops", "figures": {}} if {
	some fuel in input.fuel
	"stops" in fuel.pump.none
}
