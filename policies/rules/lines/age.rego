# METADATA
# title: Hose past its life
# description: |
#   Rubber ages on the shelf as it does on the car, so a hose's life runs
#   from the date printed on it, not from the day it was fitted. A hose that
#   travelled with a driveline may be years older than the car's own.
# related_resources:
#   - ref: common-practice
#     description: life counted from the date of make, as declared for the hose
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} has a hose {age} old; its life is {life}"
#   figures:
#     age: {dimension: age, like: kind.lasts}
#     life: {dimension: age, like: kind.lasts}
#   fix: replace the hose, and write down the date on the new one
#   rulebook: workshop
#   confidence: practice
package rules.lines.age

judges contains {"subject": line.path, "needs": ["hose.made", "kind.lasts"]} if {
	some line in input.lines
	not line.kind.liner == "metal"
}

findings contains {
	"subject": line.path,
	"at": "hose.made",
	"figures": {"age": line.calc.age, "life": line.kind.lasts},
} if {
	some line in input.lines
	not line.kind.liner == "metal"
	line.calc.age > line.kind.lasts
}
