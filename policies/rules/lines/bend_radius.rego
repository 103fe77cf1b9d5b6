# METADATA
# title: Hose bent tighter than it allows
# description: |
#   A hose bent tighter than its maker allows kinks, chafes its liner and works
#   loose at the fitting. It fails some time after it was fitted, hot and shaken.
# related_resources:
#   - ref: common-practice
#     description: a hose is held to the radius that is declared for it
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is bent to {radius}; its hose allows no less than {least}"
#   figures:
#     radius: {dimension: length, like: tightest_bend}
#     least: {dimension: length, like: kind.bend}
#   fix: re-route the hose with a wider bend, or turn its end with an angled fitting
#   rulebook: workshop
#   confidence: practice
package rules.lines.bend_radius

judges contains {"subject": line.path, "needs": ["tightest_bend", "kind.bend"]} if {
	some line in input.lines
}

findings contains {
	"subject": line.path,
	"at": "tightest_bend",
	"figures": {"radius": line.tightest_bend, "least": line.kind.bend},
} if {
	some line in input.lines
	line.tightest_bend < line.kind.bend
}
