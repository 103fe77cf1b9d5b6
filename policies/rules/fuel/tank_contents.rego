# METADATA
# title: Fuel that the map was not made for
# description: |
#   A map made for one fuel runs another lean or rich through the whole
#   range. Petrol left in the tank under a map for alcohol drowns the engine;
#   alcohol under a map for petrol leans it until it burns. It is the
#   costliest slip of a swap, because the tank stays with the car and the map
#   comes with the driveline.
# related_resources:
#   - ref: common-practice
#     description: what is in the tank now against what the map was made for
#   - ref: afdc-fuel-properties
#     description: air-fuel ratio by fuel
#   - ref: astm-d5798
#     description: from 51 to 83 % of ethanol, by the season
# custom:
#   cases:
#     kind:
#       level: fault
#       message: "{tank} is in the tank; the map was made for {map}"
#     share:
#       level: fault
#       message: "{tank_share} ethanol is in the tank; the map was made for {map_share}"
#   subject: tunes
#   stages: [filled, first_start, event]
#   figures:
#     tank: {dimension: text}
#     map: {dimension: text}
#     tank_share: {dimension: ratio, like: cell.ethanol|ethanol}
#     map_share: {dimension: ratio, like: cell.ethanol|ethanol}
#   fix: drain the tank, lines and filter and fill with the fuel of the map, or load the map of the fuel
#   rulebook: workshop
#   confidence: practice
package rules.fuel.tank_contents

import data.rules.fuel.limits.tank_contents as limits

alone := {"methanol", "diesel"}

# Sold with more ethanol in one season than in another.
seasonal := {"E85"}

judges contains {"subject": tune.path, "needs": ["fuel", "cell.filled_with"]} if some tune in input.tunes

judges contains {"subject": tune.path, "needs": ["calc.map_ethanol", "calc.tank_ethanol"]} if {
	some tune in input.tunes
	not tune.follows_fuel
}

# Where map and tank both go by such a name, only tests tell whether they agree.
judges contains {"subject": tune.path, "needs": ["ethanol", "cell.ethanol"]} if {
	some tune in input.tunes
	not tune.follows_fuel
	tune.fuel in seasonal
	tune.cell.filled_with in seasonal
}

findings contains {
	"subject": tune.path,
	"at": "fuel",
	"case": "kind",
	"figures": {"tank": tune.cell.filled_with, "map": tune.fuel},
} if {
	some tune in input.tunes
	strangers(tune.cell.filled_with, tune.fuel)
}

# A sensor in the line makes up for the share of ethanol, and for nothing else.
findings contains {
	"subject": tune.path,
	"at": "fuel",
	"case": "share",
	"figures": {"tank_share": tune.calc.tank_ethanol, "map_share": tune.calc.map_ethanol},
} if {
	some tune in input.tunes
	not tune.follows_fuel
	differ(tune.calc.tank_ethanol, tune.calc.map_ethanol)
}

strangers(one, other) if {
	one != other
	one in alone
}

strangers(one, other) if {
	one != other
	other in alone
}

differ(one, other) if one > other + limits.ethanol_off.value

differ(one, other) if other > one + limits.ethanol_off.value
