# METADATA
# title: Oil tank smaller than the driveline needs
# description: |
#   A dry-sump tank must hold the oil and leave room above it for the air to
#   leave. One that is too small for the engine foams, and the pump draws the
#   foam.
# related_resources:
#   - ref: common-practice
#     description: least tank volume as the builder of the driveline gives it
# custom:
#   level: fault
#   subject: oil
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the oil tank holds {holds}; the driveline needs {least}"
#   figures:
#     holds: {dimension: volume, like: tank.holds}
#     least: {dimension: volume, like: needs.oil_tank}
#   fix: fit the tank that belongs to the driveline, or one at least as large
#   rulebook: workshop
#   confidence: practice
package rules.oil.tank_volume

judges contains {"subject": oil.path, "needs": ["needs.oil_tank", "tank.holds"]} if some oil in input.oil

findings contains {
	"subject": oil.path,
	"at": "tank.holds",
	"figures": {"holds": oil.tank.holds, "least": oil.needs.oil_tank},
} if {
	some oil in input.oil
	oil.tank.holds < oil.needs.oil_tank
}
