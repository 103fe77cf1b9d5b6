# METADATA
# title: Cooler under more pressure than its core bears
# description: |
#   Hoses and fittings of a cooled circuit are often far stronger than the
#   cooler in it. The core is the first to swell, and it leaks where the air
#   blows hot oil or water at the car behind.
# related_resources:
#   - ref: common-practice
#     description: the maker's working pressure of the core against the pressure of the circuit
# custom:
#   level: fault
#   subject: coolers
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} can see {pressure}; its core is rated for {rated}"
#   figures:
#     pressure: {dimension: pressure, like: rated}
#     rated: {dimension: pressure, like: rated}
#   fix: fit a cooler rated for the circuit, or move it to the low-pressure side
#   rulebook: workshop
#   confidence: practice
package rules.lines.cooler_pressure

judges contains {"subject": cooler.path, "needs": ["rated", "calc.pressure"]} if some cooler in input.coolers

findings contains {
	"subject": cooler.path,
	"at": "rated",
	"figures": {"pressure": cooler.calc.pressure, "rated": cooler.rated},
} if {
	some cooler in input.coolers
	cooler.calc.pressure > cooler.rated
}
