# METADATA
# title: Pump ethanol of unknown strength
# description: |
#   What a pump sells as E85 holds anything from about half to five sixths of
#   ethanol, by season. Without a sensor in the line, or a test of the batch,
#   the map runs on a guess.
# related_resources:
#   - ref: astm-d5798
#     description: 51 to 83 % ethanol by volume
#   - ref: afdc-fuel-properties
#     description: E85 as sold
# custom:
#   level: fault
#   subject: tunes
#   stages: [filled, first_start, event]
#   message: E85 is in the tank, nobody has tested it, and no sensor tells the map
#   fix: test the batch and write its ethanol share and the day of the test, or fit a sensor that the map follows
#   rulebook: workshop
#   confidence: published
package rules.fuel.blend_known

judges contains {"subject": tune.path, "needs": ["cell.ethanol_tested"]} if {
	some tune in input.tunes
	not tune.follows_fuel
	tune.cell.filled_with == "E85"
}

judges contains {"subject": tune.path, "needs": ["cell.filled_with", "cell.ethanol_tested"]} if {
	some tune in input.tunes
	not tune.follows_fuel
	not tune.cell.filled_with
}

judges contains {"subject": tune.path, "needs": []} if some tune in input.tunes

findings contains {"subject": tune.path, "at": "cell.ethanol_tested", "figures": {}} if {
	some tune in input.tunes
	not tune.follows_fuel
	tune.cell.filled_with == "E85"
	"ethanol_tested" in tune.cell.none
}
