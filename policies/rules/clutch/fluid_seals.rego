# METADATA
# title: Clutch fluid that attacks its seals
# description: |
#   Mineral oil swells the rubber of a system built for glycol fluid, and
#   glycol fluid the nitrile of one built for mineral oil. The two ends of a
#   clutch may come from two makers and now meet in one line; whichever seal
#   is wrong gives up within days.
# related_resources:
#   - ref: seal-maker-guide
#     description: EPDM for glycol fluid, attacked by mineral oil; nitrile the other way round
# custom:
#   cases:
#     master:
#       level: fault
#       message: "the clutch holds {fluid} fluid, which attacks the {seals} seals of the master cylinder"
#     slave:
#       level: fault
#       message: "the clutch holds {fluid} fluid, which attacks the {seals} seals of the slave cylinder"
#   subject: clutch
#   stages: [joined, filled, first_start, event]
#   figures:
#     fluid: {dimension: text}
#     seals: {dimension: text}
#   fix: change the fluid or the seals so that both ends suit, and flush the line and both cylinders with new fluid
#   rulebook: workshop
#   confidence: published
package rules.clutch.fluid_seals

judges contains {"subject": clutch.path, "needs": ["fluid", "master.seals", "slave.seals"]} if {
	some clutch in input.clutch
}

findings contains {
	"subject": clutch.path,
	"at": "master.seals",
	"case": "master",
	"figures": {"fluid": clutch.fluid, "seals": clutch.master.seals},
} if {
	some clutch in input.clutch
	attacks(clutch.fluid, clutch.master.seals)
}

findings contains {
	"subject": clutch.path,
	"at": "slave.seals",
	"case": "slave",
	"figures": {"fluid": clutch.fluid, "seals": clutch.slave.seals},
} if {
	some clutch in input.clutch
	attacks(clutch.fluid, clutch.slave.seals)
}

# Only what a published source calls unfit.
attacks(fluid, seal) if {
	some kind in data.tables.fluids.rows
	kind.fluid == fluid
	some row in data.tables.materials.rows
	row.material == seal
	row.fluid == kind.group
	row.verdict == "unfit"
	row.confidence == "published"
}
