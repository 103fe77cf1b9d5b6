# METADATA
# title: Hand extinguisher too small
# description: |
#   A small bottle is empty before a fuel fire is out. The rulebook sets the least
#   for each agent.
# related_resources:
#   - ref: fia-253
#     description: art. 7.3, quantities by agent
#   - ref: motorsport-uk-ncr
#     description: chapter 7 appendix 6 art. 3.3 and 3.4
# custom:
#   cases:
#     foam: {level: fault, message: "the hand extinguisher holds {volume} of foam; {least_volume} is asked"}
#     charge: {level: fault, message: "the hand extinguisher holds {charge} of {agent}; {least_charge} is asked"}
#   subject: cars
#   stages: [event]
#   figures:
#     volume: {dimension: volume, like: safety.hand_extinguisher.volume}
#     least_volume: {dimension: volume, like: safety.hand_extinguisher.volume}
#     charge: {dimension: mass, like: safety.hand_extinguisher.charge}
#     least_charge: {dimension: mass, like: safety.hand_extinguisher.charge}
#     agent: {dimension: text}
#   fix: fit one of the size that the rulebook lists for its agent
#   rulebook: appendix-j
#   confidence: published
package rules.fire.hand_size

import data.rules.fire.limits.hand_size as limits

judges contains {"subject": car.path, "needs": ["safety.hand_extinguisher.agent"]} if some car in input.cars

judges contains {"subject": car.path, "needs": ["safety.hand_extinguisher.volume"]} if {
	some car in input.cars
	car.safety.hand_extinguisher.agent == "foam"
}

judges contains {"subject": car.path, "needs": ["safety.hand_extinguisher.charge"]} if {
	some car in input.cars
	least(car.safety.hand_extinguisher.agent)
}

findings contains {
	"subject": car.path,
	"at": "safety.hand_extinguisher.volume",
	"case": "foam",
	"figures": {"volume": car.safety.hand_extinguisher.volume, "least_volume": limits.foam.value},
} if {
	some car in input.cars
	car.safety.hand_extinguisher.agent == "foam"
	car.safety.hand_extinguisher.volume < limits.foam.value
}

findings contains {
	"subject": car.path,
	"at": "safety.hand_extinguisher.charge",
	"case": "charge",
	"figures": {
		"charge": car.safety.hand_extinguisher.charge,
		"least_charge": least(car.safety.hand_extinguisher.agent),
		"agent": car.safety.hand_extinguisher.agent,
	},
} if {
	some car in input.cars
	car.safety.hand_extinguisher.charge < least(car.safety.hand_extinguisher.agent)
}

least("gas") := limits.gas.value

least("powder") := limits.powder.value
