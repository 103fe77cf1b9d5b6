# METADATA
# title: Oil held under pressure when lines are opened
# description: |
#   An accumulator holds oil at engine pressure for days after the engine
#   stopped. Whoever opens a line to it gets the lot, hot or cold, in the
#   face.
# related_resources:
#   - ref: common-practice
#     description: an accumulator is let down before any oil line is opened
# custom:
#   level: danger
#   subject: oil
#   stages: [raised, hoisting, out_raised, out_stored]
#   message: the oil accumulator is not let down before lines are opened
#   fix: let the accumulator down into a can before the first oil line is opened, and leave its valve open
#   caution: open no oil line before its pressure is gone; wear eye protection
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
#   waivable: false
package rules.oil.stored_pressure

judges contains {"subject": oil.path, "needs": ["accumulator.vented_first"]} if some oil in input.oil

findings contains {"subject": oil.path, "at": "accumulator.vented_first", "figures": {}} if {
	some oil in input.oil
	oil.accumulator.vented_first == false
}
