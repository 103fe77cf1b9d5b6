# METADATA
# title: Open holes in the firewall
# description: |
#   The wall keeps burning fuel, hot oil and fumes off the driver only as far as
#   it is closed. A swap leaves holes where the old loom, lines or lever went.
# related_resources:
#   - ref: fia-253
#     description: a fireproof and liquid-tight wall between engine and cockpit
#   - ref: common-practice
#     description: holes are closed with metal, small ones with a grommet
# custom:
#   level: fault
#   subject: cars
#   stages: [joined, filled, first_start, event]
#   message: "open in the firewall: {holes}"
#   figures:
#     holes: {dimension: text}
#   fix: close each with a metal plate, and each line or loom with a grommet that seals
#   rulebook: workshop
#   confidence: practice
package rules.fire.wall_holes

judges contains {"subject": car.path, "needs": ["firewall.open_holes"]} if some car in input.cars

findings contains {
	"subject": car.path,
	"at": "firewall.open_holes",
	"figures": {"holes": concat(", ", car.firewall.open_holes)},
} if {
	some car in input.cars
	some _ in car.firewall.open_holes
}
