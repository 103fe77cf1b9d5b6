# METADATA
# title: Suction line that starves its pump
# description: |
#   Friction, bends and lift take from the little that the atmosphere gives.
#   Below what the pump asks for at its inlet the oil foams, the pressure
#   flickers, and bearings go.
# related_resources:
#   - ref: white-fluid-mechanics
#     description: chapter 6, losses in a suction line
#   - ref: common-practice
#     description: least pressure at the inlet as the maker of the pump gives it
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} leaves the pump {inlet} at its inlet; it asks for {least}"
#   figures:
#     inlet: {dimension: pressure, like: pump.inlet_least}
#     least: {dimension: pressure, like: pump.inlet_least}
#   fix: use a larger or shorter hose with wider ends, or set the tank higher
#   rulebook: workshop
#   confidence: practice
package rules.lines.suction_loss

judges contains {"subject": line.path, "needs": ["calc.inlet_pressure", "pump.inlet_least"]} if {
	some line in input.lines
	line.service == "engine oil"
	line.pumped_by == "suction"
}

judges contains {"subject": line.path, "needs": ["service"]} if {
	some line in input.lines
	not line.service
}

judges contains {"subject": line.path, "needs": ["pumped_by"]} if {
	some line in input.lines
	not line.pumped_by
}

findings contains {
	"subject": line.path,
	"at": "hose",
	"also": [line.pump.path],
	"figures": {"inlet": line.calc.inlet_pressure, "least": line.pump.inlet_least},
} if {
	some line in input.lines
	line.service == "engine oil"
	line.pumped_by == "suction"
	line.calc.inlet_pressure < line.pump.inlet_least
}
