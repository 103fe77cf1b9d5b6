# METADATA
# title: Hose worked above its pressure
# description: |
#   A hose is held to its rated working pressure; a burst pressure counts for
#   a quarter. The pressure to reckon with is the highest that can arise:
#   boost on top of the regulator's base, or the pump's relief valve when a
#   return is blocked. What bursts near a hot engine is fuel or oil. A line back to
#   a tank is held to what is written with it and its ports, if anything is.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: table 9-3, operating against burst pressure; par. 9-30
# custom:
#   level: danger
#   subject: lines
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} can see {pressure}; its hose may work at {rating} (as rated, or a quarter of burst)"
#   figures:
#     pressure: {dimension: pressure, like: kind.rated}
#     rating: {dimension: pressure, like: kind.rated}
#   fix: fit a hose rated for the highest pressure that can arise in it, or bring that pressure down
#   caution: do not run it at pressure; a spray of fuel or hot oil burns
#   rulebook: workshop
#   confidence: published
#   basis: threshold
package rules.lines.pressure_rating

pressurised := {
	"fuel", "engine oil", "gearbox oil", "axle oil", "coolant", "brake fluid",
	"clutch fluid", "steering fluid", "extinguishant", "compressed air",
}

judges contains {"subject": line.path, "needs": ["calc.pressure", "calc.rating"]} if {
	some line in input.lines
	line.service in pressurised
	not line.pumped_by == "suction"
	not line.pumped_by == "gravity"
	not line.pumped_by == "nothing"
	not line.pumped_by == "return"
}

judges contains {"subject": line.path, "needs": []} if {
	some line in input.lines
	line.service in pressurised
	line.pumped_by == "return"
}

judges contains {"subject": line.path, "needs": ["service", "calc.pressure", "calc.rating"]} if {
	some line in input.lines
	not line.service
}

findings contains {
	"subject": line.path,
	"at": "hose",
	"figures": {"pressure": line.calc.pressure, "rating": line.calc.rating},
} if {
	some line in input.lines
	line.service in pressurised
	not line.pumped_by == "suction"
	not line.pumped_by == "gravity"
	not line.pumped_by == "nothing"
	line.calc.pressure > line.calc.rating
}
