# METADATA
# title: Fuel feed that eats the pump's margin
# description: |
#   A pump that is just large enough at the rail's pressure has to work against the
#   lines too. A long thin feed costs little beside injection pressure, and most of
#   what a carburettor pump has.
# related_resources:
#   - ref: cengel-fluid-mechanics
#     description: pressure drop in pipes and fittings
#   - ref: common-practice
#     description: pump flow at working pressure against what the engine burns
# custom:
#   level: fault
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: "the lines to the engine take {loss}, which leaves the pump {flow}; the engine burns {demand}"
#   figures:
#     loss: {dimension: pressure, like: regulator.base}
#     flow: {dimension: volume_flow, like: pump.flow}
#     demand: {dimension: volume_flow, like: pump.flow}
#   fix: fit a feed of larger bore, shorten it, or fit a pump with more to spare at that pressure
#   rulebook: workshop
#   confidence: practice
package rules.fuel.feed_loss

judges contains {"subject": fuel.path, "needs": ["calc.fed_flow", "calc.demand"]} if some fuel in input.fuel

# A pump that is short without its lines is fuel.supply's.
findings contains {
	"subject": fuel.path,
	"at": "pump.flow",
	"figures": {"loss": fuel.calc.feed_loss, "flow": fuel.calc.fed_flow, "demand": fuel.calc.demand},
} if {
	some fuel in input.fuel
	fuel.calc.fed_flow < fuel.calc.demand
	fuel.calc.pump_flow >= fuel.calc.demand
}
