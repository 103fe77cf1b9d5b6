# METADATA
# title: Fuel pump short of the engine
# description: |
#   At full power the pump must pass all the engine burns, at the pressure of
#   the rail with boost on top and with the fuel that is in the tank. A pump
#   that falls short leans the engine out at the top of the run and burns it.
# related_resources:
#   - ref: common-practice
#     description: pump flow at working pressure against brake-specific consumption
#   - ref: afdc-fuel-properties
#     description: heat value and density of the fuels
# custom:
#   level: fault
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: "the pump gives {flow} at rail pressure; the engine burns {demand}"
#   figures:
#     flow: {dimension: volume_flow, like: pump.flow}
#     demand: {dimension: volume_flow, like: pump.flow}
#   fix: fit a pump that gives the flow at that pressure, add a second one, or lower boost, power or pressure
#   rulebook: workshop
#   confidence: practice
package rules.fuel.supply

judges contains {"subject": fuel.path, "needs": ["calc.pump_flow", "calc.demand"]} if some fuel in input.fuel

findings contains {
	"subject": fuel.path,
	"at": "pump.flow",
	"figures": {"flow": fuel.calc.pump_flow, "demand": fuel.calc.demand},
} if {
	some fuel in input.fuel
	fuel.calc.pump_flow < fuel.calc.demand
}
