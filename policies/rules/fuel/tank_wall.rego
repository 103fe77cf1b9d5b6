# METADATA
# title: Tank that shares the cockpit
# description: |
#   Fuel that leaves the tank must not reach the driver: a liquid-tight,
#   fireproof wall or case parts the tank and its fillers from the cockpit.
# related_resources:
#   - ref: fia-255
#     description: art. 5.7.3.2, tank in the boot; seen in an edition of about 2004
# custom:
#   level: danger
#   subject: fuel
#   stages: [joined, filled, first_start, event]
#   message: no wall or case parts the tank from the cockpit
#   fix: close off the tank with a metal wall or case, sealed at every pipe and wire
#   caution: do not compete with it; spilt fuel reaches the driver first
#   rulebook: appendix-j
#   confidence: practice
#   basis: hazard
package rules.fuel.tank_wall

judges contains {"subject": fuel.path, "needs": ["cell.walled_off"]} if some fuel in input.fuel

findings contains {"subject": fuel.path, "at": "cell.walled_off", "figures": {}} if {
	some fuel in input.fuel
	fuel.cell.walled_off == false
}
