# METADATA
# title: Fuel hose on oil pressure
# description: |
#   Low-pressure fuel hose is made for a few bar and for cold fuel. Engine
#   oil comes at its pressure cold and past its temperature hot; the hose
#   bursts or slides off.
# related_resources:
#   - ref: sae-j30
#     description: "scope: the types are fuel hose of low pressure"
#   - ref: common-practice
#     description: oil pressure of 10 psi for each 1000 rpm is over what such hose bears
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} carries oil in fuel hose marked {standard}"
#   figures:
#     standard: {dimension: text}
#   fix: fit lined or wire-reinforced hose that its maker sells for engine oil, with ends made for it
#   rulebook: workshop
#   confidence: practice
package rules.oil.hose_class

import data.lib.hoses

judges contains {"subject": line.path, "needs": ["kind.standard"]} if {
	some line in input.lines
	line.service == "engine oil"
	not line.pumped_by == "gravity"
}

judges contains {"subject": line.path, "needs": ["service", "kind.standard"]} if {
	some line in input.lines
	not line.service
}

findings contains {"subject": line.path, "at": "kind.standard", "figures": {"standard": line.kind.standard}} if {
	some line in input.lines
	line.service == "engine oil"
	not line.pumped_by == "gravity"
	hoses.low_pressure(line.kind.standard)
}
