# METADATA
# title: Bare aluminium in methanol
# description: |
#   Neat methanol strips the oxide film that protects bare aluminium. The
#   metal goes to a jelly that blocks filters and injectors, and fittings thin
#   from within. Anodised or nickel-plated aluminium, and stainless, last.
# related_resources:
#   - ref: sae-930447
#     description: coatings and metals in methanol
# custom:
#   level: fault
#   subject: joints
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "{subject} takes methanol through bare {metal}"
#   figures:
#     metal: {dimension: text}
#   fix: change it for anodised or plated aluminium or for stainless, and flush after each event with a little petrol
#   rulebook: workshop
#   confidence: published
package rules.fuel.methanol_metal

bare := {"aluminium", "cast-aluminium"}

judges contains {"subject": joint.path, "needs": ["here.metal", "there.metal"]} if {
	some joint in input.joints
	joint.fuel == "methanol"
}

judges contains {"subject": joint.path, "needs": ["fuel"]} if {
	some joint in input.joints
	joint.service == "fuel"
	not joint.fuel
}

judges contains {"subject": joint.path, "needs": ["service"]} if {
	some joint in input.joints
	joint.kind == "line"
	not joint.service
	not joint.fuel
}

findings contains {"subject": joint.path, "at": "here", "figures": {"metal": joint.here.metal}} if {
	some joint in input.joints
	joint.fuel == "methanol"
	joint.here.metal in bare
	not joint.here.approved == "methanol"
}

findings contains {"subject": joint.path, "at": "there", "also": [half], "figures": {"metal": joint.there.metal}} if {
	some joint in input.joints
	joint.fuel == "methanol"
	joint.there.metal in bare
	not joint.there.approved == "methanol"
	half := joint.there.path
}
