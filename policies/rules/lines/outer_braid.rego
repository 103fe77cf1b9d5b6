# METADATA
# title: Fuel or oil hose without a braid
# description: |
#   The rules ask flexible fuel and oil lines for an outer braid that bears
#   rubbing and flame. Bare rubber chafes through on the first clip that is
#   missing.
# related_resources:
#   - ref: fia-253
#     description: "art. 3.2: flexible lines have threaded, crimped or self-sealing ends and an outer braid that resists abrasion and flame"
#   - ref: fia-283
#     description: art. 3.2
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} carries {service} in hose covered with {cover}"
#   figures:
#     service: {dimension: text}
#     cover: {dimension: text}
#   fix: fit hose with a metal or textile braid, and ends made for it
#   rulebook: appendix-j
#   confidence: published
package rules.lines.outer_braid

smooth := {"rubber", "fabric-ply", "wire-wound", "bare"}

judges contains {"subject": line.path, "needs": ["kind.cover"]} if {
	some line in input.lines
	line.service in {"fuel", "engine oil"}
	not line.kind.liner == "metal"
}

judges contains {"subject": line.path, "needs": ["service", "kind.cover"]} if {
	some line in input.lines
	not line.service
	not line.kind.liner == "metal"
}

findings contains {
	"subject": line.path,
	"at": "kind.cover",
	"figures": {"service": line.service, "cover": line.kind.cover},
} if {
	some line in input.lines
	line.service in {"fuel", "engine oil"}
	not line.kind.liner == "metal"
	line.kind.cover in smooth
}
