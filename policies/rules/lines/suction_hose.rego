# METADATA
# title: Hose that pulls flat on the suction side
# description: |
#   A pump that sucks through a hose without reinforcement against suction
#   closes it just when the flow is highest, and starves.
# related_resources:
#   - ref: common-practice
#     description: suction hose is wire-wound or otherwise held open
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is on the suction side, and its hose pulls flat"
#   fix: fit a hose that its maker sells for suction
#   rulebook: workshop
#   confidence: practice
package rules.lines.suction_hose

judges contains {"subject": line.path, "needs": ["kind.holds_suction"]} if {
	some line in input.lines
	line.pumped_by == "suction"
}

judges contains {"subject": line.path, "needs": ["pumped_by", "kind.holds_suction"]} if {
	some line in input.lines
	not line.pumped_by
}

findings contains {"subject": line.path, "at": "kind.holds_suction", "figures": {}} if {
	some line in input.lines
	line.pumped_by == "suction"
	line.kind.holds_suction == false
}
