# METADATA
# title: Rubber hose bent tighter than its standard
# description: |
#   Where the hose declares no least radius, the aircraft standard for rubber
#   hose of its size tells what would be sound. It says nothing of lined
#   racing hose, which bends far tighter.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: table 9-3, MIL-H-8794 hose, least bend radius
# custom:
#   level: advice
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} is bent to {radius}; rubber hose of this size is good for {least}"
#   figures:
#     radius: {dimension: length, like: tightest_bend}
#     least: {dimension: length, like: tightest_bend}
#   fix: ask the maker for the least radius and write it down, or route the hose wider
#   rulebook: workshop
#   confidence: published
package rules.lines.rubber_bend

rubbers := {"nitrile", "hydrogenated-nitrile", "chloroprene", "EPDM", "fluorocarbon"}

judges contains {"subject": line.path, "needs": ["tightest_bend", "from.half.dash"]} if {
	some line in input.lines
	not line.kind.bend
	line.kind.liner in rubbers
}

judges contains {"subject": line.path, "needs": ["kind.liner", "tightest_bend", "from.half.dash"]} if {
	some line in input.lines
	not line.kind.bend
	not line.kind.liner
}

findings contains {
	"subject": line.path,
	"at": "tightest_bend",
	"figures": {"radius": line.tightest_bend, "least": row.bend_radius},
} if {
	some line in input.lines
	not line.kind.bend
	line.kind.liner in rubbers
	some row in data.tables.hose_bend.rows
	row.dash == line.from.half.dash
	line.tightest_bend < row.bend_radius
}
