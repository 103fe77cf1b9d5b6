# METADATA
# title: Bare aluminium in methanol
# description: |
#   Neat methanol strips the oxide film that protects bare aluminium. The
#   metal goes to a jelly that blocks filters and injectors, and fittings
#   thin from within. Anodised or nickel-plated aluminium, and stainless,
#   last.
# related_resources:
#   - ref: sae-930447
#     description: coatings and metals in methanol
# custom:
#   level: fault
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} carries methanol through bare {metal}"
#   figures:
#     metal: {dimension: text}
#   fix: change it for anodised or plated aluminium or for stainless, and flush after each event with a little petrol
#   rulebook: workshop
#   confidence: published
package rules.fuel.methanol_metal

bare := {"aluminium", "cast-aluminium"}

judges contains {
	"subject": line.path,
	"needs": ["from.half.metal", "from.port.half.metal", "to.half.metal", "to.port.half.metal"],
} if {
	some line in input.lines
	line.fuel == "methanol"
}

judges contains {"subject": line.path, "needs": ["service", "fuel"]} if {
	some line in input.lines
	not line.service
	not line.fuel
}

judges contains {"subject": line.path, "needs": ["fuel"]} if {
	some line in input.lines
	line.service == "fuel"
	not line.fuel
}

findings contains {
	"subject": line.path,
	"at": "from.half",
	"also": [line.from.half.path],
	"figures": {"metal": line.from.half.metal},
} if {
	some line in input.lines
	line.fuel == "methanol"
	line.from.half.metal in bare
	not line.from.half.approved == "methanol"
}

findings contains {
	"subject": line.path,
	"at": "from.port.half",
	"also": [line.from.port.half.path],
	"figures": {"metal": line.from.port.half.metal},
} if {
	some line in input.lines
	line.fuel == "methanol"
	line.from.port.half.metal in bare
	not line.from.port.half.approved == "methanol"
}

findings contains {
	"subject": line.path,
	"at": "to.half",
	"also": [line.to.half.path],
	"figures": {"metal": line.to.half.metal},
} if {
	some line in input.lines
	line.fuel == "methanol"
	line.to.half.metal in bare
	not line.to.half.approved == "methanol"
}

findings contains {
	"subject": line.path,
	"at": "to.port.half",
	"also": [line.to.port.half.path],
	"figures": {"metal": line.to.port.half.metal},
} if {
	some line in input.lines
	line.fuel == "methanol"
	line.to.port.half.metal in bare
	not line.to.port.half.approved == "methanol"
}
