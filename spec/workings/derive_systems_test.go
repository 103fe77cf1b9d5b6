package workings

import (
	"fmt"
	"testing"
)

// whatHangs is a car from which a driveline of 250 kg is lifted by a chain of two
// legs, to go on a dolly. The centre of mass lies 0.25 m below the eyes, 0.20 m from
// one and 0.50 m from the other, and the hook comes to be 0.35 m over them.
var whatHangs = specs{
	car: "tyre-radius = \"302 mm\"\nground-clearance = \"70 mm\"\n" + onStands("[fits.it]\nfile = \"driveline.toml\"\nat = \"-900, 0, 300 mm\"\nnose-up = \"0 deg\"\nleaves = [\"up\", \"forward\"]\nbehind = \"bonnet\"\nrocks = \"8 mm\"\n"+
		"[support]\nwheels-down = \"none\"\nsling = \"chain\"\ndolly = \"flat\"\n"+
		"[solids.slam-panel]\nbox = [\"500, -300, 0 mm\", \"700, 300, 650 mm\"]\n"+
		"[solids.bonnet]\nbox = [\"-900, -500, 700 mm\", \"700, 500, 900 mm\"]\npart-of = \"bonnet\"\n"+
		"[solids.roof]\nbox = [\"-3000, -500, 1000 mm\", \"-1600, 500, 1200 mm\"]\n"+
		"[access.bonnet]\nheld = \"4 x quarter-turn\"\n"+
		"[final-drive]\nratio = 4.11\n"+
		"[mounts.left]\nmeets = \"driveline.left\"\nbolts = { count = 2 }\n[mounts.right]\nmeets = \"driveline.right\"\nbolts = { count = 2 }\n[mounts.rear]\nmeets = \"driveline.rear\"\nbolts = { count = 4 }\n"),
	driveline: "[engine]\ntorque = \"340 N m at 5200 rpm\"\nrev-limit = \"7600 rpm\"\n[gearbox]\nkind = \"six-speed, in line\"\nratios = [2.82, 1.00]\n" +
		"[weighing]\nmass = \"250 kg\"\nat = \"0, 0, -250 mm\"\nunsure = \"10 mm\"\n" +
		"[lift.near]\nat = \"200, 0, 0 mm\"\n[lift.far]\nat = \"-500, 0, 0 mm\"\n" +
		"[solids.unit]\nbox = [\"-600, -200, -350 mm\", \"300, 200, 100 mm\"]\n" +
		"[mounts.left]\nat = \"100, 300, 0 mm\"\nfaces = \"left\"\n[mounts.right]\nat = \"100, -300, 0 mm\"\nfaces = \"right\"\n[mounts.rear]\nat = \"-500, 0, 0 mm\"\nfaces = \"down\"\n",
	shop: standShop +
		"[slings.chain]\nlegs = { near = { length = \"403.113 mm\", to = \"near\" }, far = { length = \"610.328 mm\", to = \"far\" } }\n" +
		"[dollies.flat]\nframe = \"50 x 3 mm cold-formed steel\"\n" +
		"castors.fl = { at = \"300, 250, -400 mm\", trail = \"30 mm\" }\ncastors.fr = { at = \"300, -250, -400 mm\", trail = \"30 mm\" }\n" +
		"castors.rl = { at = \"-700, 250, -400 mm\", trail = \"30 mm\" }\ncastors.rr = { at = \"-700, -250, -400 mm\", trail = \"30 mm\" }\n",
}

func TestWhatHangs(t *testing.T) {
	runAll(t, []derivation{
		{
			// Published case: 205.7 and 124.6 kg, where equal shares would say 181 each;
			// the far eye is pulled atan(500/350) = 55 degrees off its axis. The driveline's
			// lowest point hangs 700 mm under the hook; the car is raised by 300 mm; the slam
			// panel is the highest thing ahead: 650 + 300 + 700. The roof is behind, the bonnet
			// off.
			name: "a sling of two legs", specs: whatHangs,
			want: map[string]string{
				"driveline.lift.near tension": "205.7 kg", "driveline.lift.far tension": "124.6 kg",
				"driveline.lift.far eye_pull": "55.008 deg", "driveline.lift.near leg_angle": "60.255 deg",
				"support hook_needed": "1650 mm",
			},
		},
		{
			// The centre is 300 mm behind the front castors of 1000 mm: 70 % on two of them, and
			// rocking half of all on one; the rear ones 15 % each, and 30 % rocking.
			// Turned inwards by 30 mm along the diagonal to their middle, the contacts are
			// 250 (1 - 30/559.017) = 236.58 mm aside, and the centre 150 mm over the floor.
			// It goes over with one side 473.16 mm × 236.58/280.13 up, 280.13 being the way from
			// the centre to the edge.
			// M = 250 g 1.0/4, W = 194671.36/25 mm³, by the integral of the outline.
			name: "a dolly of four castors", specs: whatHangs,
			want: map[string]string{
				"shop.dollies.flat.castors.fl load": "87.5 kg", "shop.dollies.flat.castors.rr load": "37.5 kg",
				"shop.dollies.flat.castors.fl rocking": "125 kg", "shop.dollies.flat.castors.rr rocking": "75 kg",
				"support dolly_margin": "236.58 mm", "support dolly_tilt": "57.62 deg", "support dolly_step": "399.6 mm",
				"support dolly_stress": fmt.Sprintf("%.0f Pa", 250*StandardGravity/4/(194671.36/25*1e-9)),
			},
		},
		{
			// On three mounts, the front pair 100 mm ahead of the centre and the rear one 500
			// behind: 5/12 of 250 g on each of the pair, 1/6 on the rear. The couple of
			// 340 × 2.82 = 958.8 N m over 0.6 m is 1598 N up and down. Two bolts a side take
			// (1021.5 + 1598) / 2 across; the rear ones are level and carry no couple.
			name: "mounts", specs: whatHangs,
			want: map[string]string{
				"mounts.left rest_load": fmt.Sprint(250*StandardGravity*5/12) + " N", "mounts.rear rest_load": fmt.Sprint(250*StandardGravity/6) + " N",
				"mounts.left reaction": "1598 N", "mounts.rear reaction": "0 N",
				"mounts.left bolt_shear": fmt.Sprint((250*StandardGravity*5/12+1598)/2) + " N", "mounts.left bolt_pull": "0 N",
				"mounts.rear bolt_shear": "0 N", "mounts.rear bolt_pull": "0 N",
			},
		},
		{
			// 7600 rpm, 302 mm, 4.11 in all.
			name: "road speed", specs: whatHangs,
			want: map[string]string{"driveline.gearbox road_speed": fmt.Sprint(7600*3.14159265359/30*0.302/4.11) + " m/s"},
		},
		{
			name: "no sling named",
			specs: specs{
				car: onStands(noWheels), shop: standShop,
				driveline: lump + "[lift.near]\nat = \"200, 0, 0 mm\"\n",
			},
			want: map[string]string{"support hang_tilt": "missing support.sling", "driveline.lift.near tension": "absent", "support dolly_margin": "absent"},
		},
		{
			name: "a leg to nowhere",
			specs: specs{
				car: onStands("[support]\nwheels-down = \"none\"\nsling = \"chain\"\n"), driveline: lump + "[lift.near]\nat = \"200, 0, 0 mm\"\n",
				shop: standShop + "[slings.chain]\nlegs = { near = { length = \"400 mm\", to = \"near\" }, far = { length = \"400 mm\", to = \"far\" } }\n",
			},
			want: map[string]string{"support hang_tilt": "missing driveline.lift.far", "driveline.lift.near tension": "missing driveline.lift.far"},
		},
		{
			// z_pad 100 - clearance 70 + the driveline's top 100 - (-400) over the floor.
			name: "out beneath the car",
			specs: specs{
				car: "ground-clearance = \"70 mm\"\n" + onStands("[fits.it]\nfile = \"driveline.toml\"\nat = \"-900, 0, 300 mm\"\nnose-up = \"0 deg\"\nleaves = \"down\"\n"+
					"[support]\nwheels-down = \"none\"\ndolly = \"flat\"\n"),
				driveline: whatHangs.driveline, shop: whatHangs.shop,
			},
			want: map[string]string{"support saddle_needed": "530 mm", "support hook_needed": "absent"},
		},
	})
}

// TestAxleLoads: the car of 1200 kg on axles 2.0 m apart with its centre 0.9 m
// behind the front one; without 300 kg at 0.2 m the centre is at 1.1333 m.
func TestAxleLoads(t *testing.T) {
	runAll(t, []derivation{{
		specs: specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels), driveline: lump, shop: standShop},
		want: map[string]string{
			"car front_axle": "660 kg", "car rear_axle": "540 kg", "car front_axle_out": "390 kg", "car rear_axle_out": "510 kg",
			// On the middle line: half of each axle.
			"car front_left_out": "195 kg", "car rear_right_out": "255 kg",
		},
	}})
}

// systems is a car whose fuel, cooling, oil, wiring and shaft are worked out below.
var systems = specs{
	car: "[fuel.cell]\nfilled-with = \"petrol\"\nports.feed = { end = \"-8 male 37-flare\", at = \"-2000, 0, 200 mm\" }\n[fuel]\ncarries = \"fuel\"\n" +
		"[fuel.pump]\nflow = \"2 L/min at 5 bar\"\nports.in = { end = \"-8 male 37-flare\", at = \"-1800, 300, 500 mm\", under-it = \"-8 female O-ring-boss\" }\n" +
		"[fuel.regulator]\nbase = \"4 bar\"\nfollows-manifold = false\n" +
		"[lines.suck]\nhose = \"1 m of h8\"\nfrom = [\"fuel.cell.feed\", \"female 37-flare 90deg\"]\nto = [\"fuel.pump.in\", \"female 37-flare\"]\nsuction = true\n" +
		"[cooling]\nradiator = { sheds = \"100 kW\" }\nfan = { draws = \"20 A\" }\n[oil]\ncooler = { sheds = \"24 kW\" }\n" +
		"[electrics]\nbattery = { capacity = \"30 Ah\" }\n[electrics.modules.pdm]\nchannels.1 = { trips = \"20 A\" }\nports.in = \"M8 stud\"\n" +
		"[circuits.pump]\nfrom = \"electrics.modules.pdm.1\"\nto = \"fuel.pump\"\nload = \"12 A\"\npurpose = \"fuel pump\"\n[circuits.fan]\nto = \"cooling.fan\"\nload = \"20 A\"\npurpose = \"fan\"\n" +
		"[circuits.feed]\nto = \"electrics.modules.pdm\"\nload = \"100 A\"\npurpose = \"other\"\n[circuits.starter]\npurpose = \"starter\"\nwire = \"50 mm2\"\nlength = \"0.65 m\"\nreturn = \"chassis\"\nload = \"none\"\npeak = \"260 A\"\n" +
		"[shafts.prop]\nfrom = \"driveline.prop\"\nto = \"final-drive.nose\"\ntube = \"76.2 x 1.65 mm steel\"\njoints = \"cross\"\nangle-front = \"3 deg\"\nangle-rear = \"-2 deg\"\nphased = true\n" +
		"[final-drive]\nratio = 4.11\nports.nose = \"65 mm male flange steel\"\n",
	driveline: "[engine]\npower-crank = \"200 kW at 7000 rpm\"\nconsumption = \"300 g/kWh\"\nfuel = \"petrol\"\ninduction = \"turbocharged\"\nboost = \"1 bar\"\n" +
		"injectors = \"4 x 400 mL/min at 3 bar\"\nalternator = \"90 A\"\ntorque = \"340 N m at 5000 rpm\"\nrev-limit = \"7600 rpm\"\n" +
		"[gearbox]\nratios = [2.82, 1.00]\n[ports]\nprop = \"65 mm male flange steel\"\n" +
		"[pumps]\nwater = { flow = \"150 L/min at 7000 rpm\" }\noil = { flow = \"46 L/min at 7000 rpm\" }\n[needs]\nheat-coolant = \"95 kW\"\nheat-oil = \"20 kW\"\n",
	shop: "[hoses.h8]\nsize = \"-8\"\nbore = \"10 mm\"\n",
}

func TestSystems(t *testing.T) {
	follows := systems
	follows.car = "[fuel.cell]\nfilled-with = \"E85\"\n[fuel.pump]\nflow = \"3 L/min at 6 bar\"\n[fuel.regulator]\nbase = \"4 bar\"\nfollows-manifold = true\n"
	runAll(t, []derivation{
		{
			// 200 kW × 300 g/kWh = 60 kg/h, at 0.745 kg/L 1342.3 mL/min. Boost leaves 3 of 4
			// bar, at which an injector is as rated.
			name: "injectors under boost", specs: systems,
			want: map[string]string{
				"fuel injector_pressure": "3 bar", "fuel injector_flow": "400 mL/min", "fuel injector_duty": fmt.Sprint(1342.28 / 1600),
				"fuel return_flow": "657.7 mL/min", "fuel air_fuel": "14.7",
			},
		},
		{
			// A referenced regulator keeps 4 bar: √(4/3) of the rated flow. E85 at its nominal
			// 85 % burns in 9.8 times its mass of air; the name is a guess at what was sold.
			name: "injectors kept at their pressure", specs: follows, tolerance: 0.003,
			want: map[string]string{
				"fuel injector_pressure": "4 bar", "fuel injector_flow": "461.88 mL/min", "fuel air_fuel": "~9.8",
			},
		},
		{
			// By the fluids library: v 0.42441 m/s, Re 7073.6, f 0.033912, 227.54 Pa over
			// 1 m. K = 0.5 + 1.0 + 0.9 + 0.08; the pump is 0.3 m over the tank.
			name: "a suction line", specs: systems, tolerance: 1e-4,
			want: map[string]string{
				"lines.suck pressure_drop": "227.54 Pa", "lines.suck minor_loss": fmt.Sprint(2.48*745*0.4244131816*0.4244131816/2) + " Pa",
				"lines.suck climb":          fmt.Sprint(745*StandardGravity*0.3) + " Pa",
				"lines.suck inlet_pressure": fmt.Sprint(-(227.5407 + 166.4009 + 2191.7863)) + " Pa",
				// √(200² + 300² + 300²) is 469.04 mm.
				"lines.suck slack": "530.96 mm", "lines.suck slack_needed": "40 mm",
			},
		},
		{
			// 95 kW in 150 L/min of 1029.5 kg/m³ and 3.5 kJ/(kg K); and for 6 K. 20 kW in
			// 46 L/min of 869 kg/m³ and 2.22 kJ/(kg K).
			name: "heat", specs: systems,
			want: map[string]string{
				"cooling rise": "10.546 K", "cooling flow_needed": "263.65 L/min", "cooling shed_share": fmt.Sprint(100. / 95),
				"oil rise": "13.522 K", "oil shed_share": "1.2",
			},
		},
		{
			// 12 and 20 A; the feed of the module carries the pump and is not counted. 0.386
			// mΩ/m over 0.65 m at 260 A.
			name: "supply and load", specs: systems,
			want: map[string]string{
				"electrics load": "32 A", "electrics alternator_share": fmt.Sprint(32. / 90), "electrics run_time": "0.9375 h", "electrics isolated": "90 A",
				"circuits.starter peak_drop": fmt.Sprint(0.386e-3*0.65*260) + " V",
			},
		},
		{
			// 958.8 N m in a tube of 76.2 and 72.9 mm; √(3² - 2²) degrees; and 3.2 degrees at
			// 5000 rpm is 2.105 at 7600.
			name: "a shaft", specs: systems,
			want: map[string]string{
				"shafts.prop torque": "958.8 N m", "shafts.prop torsion_stress": "68.002 MPa",
				"shafts.prop joint_angle": "3 deg", "shafts.prop angle_difference": "1 deg", "shafts.prop residual_angle": "2.2361 deg",
				"shafts.prop joint_angle_most": "2.1053 deg",
			},
		},
		{
			// 24 N m oiled: F = 24 / (0.18 × 8 mm), give or take 30 %. An M10 hexagon is
			// 16 or 17 mm by the standard it was made to.
			name: "spanners and preload",
			specs: specs{car: "[fasteners]\nm8 = { bolts = \"4 x M8x1.25x30 8.8 hex, 24 N m, oiled\" }\nm10 = { bolts = \"4 x M10x1.5x30 8.8 hex, 49 N m, oiled\" }\n" +
				"small = { bolts = \"4 x M10x1.5x30 8.8 small-hex\" }\nkey = { bolts = \"4 x M10x1.5x30 12.9 socket\" }\ninch = { bolts = \"4 x 3/8-24 x 1 in grade-8 hex\" }\n" +
				"flange = { bolts = \"4 x M10x1.5x30 8.8 flange-hex\" }\n"},
			want: map[string]string{
				"fasteners.m8.bolts preload": fmt.Sprint(24/(0.18*0.008)) + " N", "fasteners.m8.bolts preload_least": fmt.Sprint(0.7*24/(0.18*0.008)) + " N",
				"fasteners.m8.bolts preload_most": fmt.Sprint(1.3*24/(0.18*0.008)) + " N",
				"fasteners.m8.bolts spanner":      "13 mm", "fasteners.m10.bolts spanner": "missing fasteners.m10.bolts.across-flats",
				"fasteners.small.bolts spanner": "14 mm", "fasteners.key.bolts spanner": "8 mm", "fasteners.inch.bolts spanner": "9/16 in",
				"fasteners.flange.bolts spanner": "missing fasteners.flange.bolts.across-flats",
			},
		},
	})
}
