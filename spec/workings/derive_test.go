package workings

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"
	"gonum.org/v1/gonum/spatial/r3"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/unit"
)

// specs are the texts of one composition. A car without a driveline's text has an
// empty bay; a driveline without a car's text is judged alone.
type specs struct {
	car, driveline, shop string
	axle                 string // the car's front axle; "" for one at the origin
}

// derive joins the specs and works them out as of 2025-09-20.
func (s specs) derive(t *testing.T) (*document.Document, Trace) {
	t.Helper()
	if s.axle == "" {
		s.axle = "0, 0, 0 mm"
	}
	head := map[string]string{
		"car.toml":       "[car]\nname = \"A\"\nshop = \"shop.toml\"\nfront-axle = \"" + s.axle + "\"\n",
		"driveline.toml": "[driveline]\nname = \"D\"\nshop = \"shop.toml\"\n",
		"shop.toml":      "[shop]\nname = \"S\"\n",
	}
	if s.driveline != "" {
		head["car.toml"] += "driveline = \"driveline.toml\"\n"
	}
	files := fstest.MapFS{}
	for name, text := range map[string]string{"car.toml": s.car, "driveline.toml": s.driveline, "shop.toml": s.shop} {
		files[name] = &fstest.MapFile{Data: []byte(head[name] + text)}
	}
	o := spec.NewOutfit(&tree.Tree{FS: files})
	c, ok := o.Car("car.toml")
	if s.car == "" {
		c, ok = o.Driveline("driveline.toml")
	}
	for _, p := range o.Problems() {
		t.Errorf("%s", p.Error())
	}
	if !ok {
		t.FailNow()
	}
	d := document.Join(c, time.Date(2025, 9, 20, 0, 0, 0, 0, time.UTC))
	return d, Derive(d)
}

// find returns the working of "subject name".
func (trace Trace) find(figure string) (Working, bool) {
	i := slices.IndexFunc(trace, func(w Working) bool { return w.Subject+" "+w.Name == figure })
	if i < 0 {
		return Working{}, false
	}
	return trace[i], true
}

// expect holds a trace to what is wanted of some of its figures: a value in any
// unit, "missing" with the paths that are, or "refused" with a part of the note. A
// "~" before a value says that it rests on a guess.
func expect(t *testing.T, trace Trace, want map[string]string, tolerance float64) {
	t.Helper()
	for figure, text := range want {
		w, ok := trace.find(figure)
		if text == "absent" {
			if ok {
				t.Errorf("%s: worked out, and nothing calls for it: %+v", figure, w)
			}
			continue
		}
		if !ok {
			t.Errorf("%s: not worked out", figure)
			continue
		}
		if paths, isMissing := strings.CutPrefix(text, "missing "); isMissing {
			if diff := cmp.Diff(strings.Fields(paths), w.Missing); w.Known || diff != "" {
				t.Errorf("%s: known is %v; missing paths: %s", figure, w.Known, diff)
			}
			continue
		}
		if reason, isRefused := strings.CutPrefix(text, "refused "); isRefused {
			if w.Known || len(w.Missing) > 0 || !strings.Contains(w.Note, reason) {
				t.Errorf("%s: want it refused for %q, got %+v", figure, reason, w)
			}
			continue
		}
		value, guess := strings.CutPrefix(text, "~")
		wanted, err := strconv.ParseFloat(value, 64)
		if err != nil {
			q, err := unit.Parse(value, w.Dimension)
			if err != nil {
				t.Fatalf("%s: %v", figure, err)
			}
			wanted = q.SI
		}
		if !w.Known || math.Abs(w.Value-wanted) > tolerance*max(math.Abs(wanted), 1e-9) {
			t.Errorf("%s: got %s, want %s; missing %v, note %q", figure, unit.Format(w.Value, w.Dimension, w.Unit), value, w.Missing, w.Note)
		}
		if w.Guessed != guess {
			t.Errorf("%s: guessed is %v", figure, w.Guessed)
		}
	}
}

// A derivation is one example, worked by hand or printed in the source that its
// comment names.
type derivation struct {
	name string
	specs
	tolerance float64 // relative; 0 for 0.1 %
	want      map[string]string
}

func (c derivation) run(t *testing.T) {
	_, trace := c.derive(t)
	tolerance := c.tolerance
	if tolerance == 0 {
		tolerance = 0.001
	}
	expect(t, trace, c.want, tolerance)
}

func runAll(t *testing.T, all []derivation) {
	for _, c := range all {
		t.Run(c.name, c.run)
	}
}

func TestEngine(t *testing.T) {
	runAll(t, []derivation{
		{
			// 4 × π/4 × 0.084² × 0.090 = 1.99504e-3.
			name:  "swept volume",
			specs: specs{car: "[oil]\ncarries = \"engine oil\"\n", driveline: "[engine]\ncylinders = 4\nbore = \"84 mm\"\nstroke = \"~90 mm\"\n"},
			want:  map[string]string{"driveline.engine displacement": "~1995.04 cm3", "oil displacement": "~1995.04 cm3"},
		},
		{
			// A fuel-sizing manual: 350 hp at 0.5 lb/(hp h) burns 175 lb/h.
			name:      "declared consumption",
			specs:     specs{driveline: "[engine]\npower-crank = \"350 hp imperial at 6000 rpm\"\nconsumption = \"0.5 lb/(hp h)\"\nfuel = \"petrol\"\n"},
			tolerance: 1e-9,
			want:      map[string]string{"driveline.engine fuel_mass_flow": "175 lb/h"},
		},
		{
			// 300 hp at the wheels with 15 % lost is 353 hp (the same manuals).
			name:      "power at the wheels",
			specs:     specs{driveline: "[engine]\npower-wheels = \"300 hp imperial at 6000 rpm\"\nwheel-loss = \"15 %\"\n"},
			tolerance: 0.0005,
			want:      map[string]string{"driveline.engine power": "353 hp imperial"},
		},
		{
			// Boosted petrol 0.65 lb/(hp h) is 395.4 g/kWh: 100 kW take 39.54 kg/h,
			// which is 53.07 L/h at 745 kg/m3.
			name:  "usual consumption",
			specs: specs{driveline: "[engine]\npower-crank = \"100 kW at 6000 rpm\"\nfuel = \"petrol\"\ninduction = \"turbocharged\"\n"},
			want:  map[string]string{"driveline.engine fuel_mass_flow": "39.54 kg/h", "driveline.engine fuel_flow": "53.07 L/h"},
		},
		{
			// Petrol 0.50 lb/(hp h) unboosted, 304.15 g/kWh, times 43440/26947.
			name:  "a fuel without a band",
			specs: specs{driveline: "[engine]\npower-crank = \"100 kW at 6000 rpm\"\nfuel = \"ethanol\"\ninduction = \"naturally aspirated\"\n"},
			want:  map[string]string{"driveline.engine fuel_mass_flow": "49.03 kg/h"},
		},
		{
			name:  "next to nothing said",
			specs: specs{driveline: "[engine]\nlayout = \"inline four\"\n"},
			want: map[string]string{
				"driveline.engine displacement":   "missing driveline.engine.cylinders driveline.engine.bore driveline.engine.stroke",
				"driveline.engine power":          "missing driveline.engine.power-crank",
				"driveline.engine fuel_mass_flow": "missing driveline.engine.power-crank driveline.engine.fuel driveline.engine.induction",
			},
		},
		{
			// 340 × 1.5; 1 + 0.25 where a share is written; 340 × 2.82.
			name:  "torque through the gearbox",
			specs: specs{car: "# any\n", driveline: "[engine]\ntorque = \"340 N m at 5000 rpm\"\n[gearbox]\nratios = [2.82, 1.0]\nshock = \"1.5\"\n"},
			want:  map[string]string{"driveline.gearbox asked": "510 N m", "driveline.gearbox axle_torque": "958.8 N m"},
		},
		{
			name:  "a margin written as a share",
			specs: specs{car: "# any\n", driveline: "[engine]\ntorque = \"340 N m at 5000 rpm\"\n[gearbox]\nshock = \"25 %\"\n"},
			want:  map[string]string{"driveline.gearbox asked": "425 N m", "driveline.gearbox axle_torque": "missing driveline.gearbox.ratios"},
		},
	})
}

const boosted = "[engine]\ninduction = \"turbocharged\"\nboost = \"1.6 bar\"\n"

func TestFuel(t *testing.T) {
	runAll(t, []derivation{
		{
			// 3.5 + 1.6 bar; between the points 5.5 - 0.9 × (5.1 - 3.0)/(7.2 - 3.0) =
			// 5.05 L/min.
			name: "pump along its curve",
			specs: specs{
				car:       "[fuel.pump]\nflow = [\"4.6 L/min at 7.2 bar\", \"~5.5 L/min at 3.0 bar\"]\n[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n",
				driveline: boosted,
			},
			want: map[string]string{"fuel rail_pressure": "5.1 bar", "fuel pump_flow": "~5.05 L/min"},
		},
		{
			name: "one point serves at and under its pressure",
			specs: specs{
				car:       "[fuel.pump]\nflow = \"4.6 L/min at 5.1 bar\"\n[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n",
				driveline: boosted,
			},
			want: map[string]string{"fuel pump_flow": "4.6 L/min"},
		},
		{
			name: "a curve that stops short is not drawn on",
			specs: specs{
				car:       "[fuel.pump]\nflow = \"4.6 L/min at 5.0 bar\"\n[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n",
				driveline: boosted,
			},
			want: map[string]string{"fuel pump_flow": "missing fuel.pump.flow"},
		},
		{ // The map asks for 0.4 bar more than the engine is said to run.
			name:  "a map with more boost",
			specs: specs{car: "[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n", driveline: boosted + "[tune]\nboost = \"2.0 bar\"\n"},
			want:  map[string]string{"fuel rail_pressure": "5.5 bar"},
		},
		{
			name:  "an engine without boost",
			specs: specs{car: "[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n", driveline: "[engine]\ninduction = \"naturally aspirated\"\n"},
			want:  map[string]string{"fuel rail_pressure": "3.5 bar"},
		},
		{
			name:  "a regulator that follows nothing",
			specs: specs{car: "[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = false\n", driveline: boosted},
			want:  map[string]string{"fuel rail_pressure": "3.5 bar"},
		},
		{
			name:  "nobody says whether it follows",
			specs: specs{car: "[fuel.regulator]\nbase = \"3.5 bar\"\n", driveline: boosted},
			want:  map[string]string{"fuel rail_pressure": "missing fuel.regulator.follows-manifold", "fuel pump_flow": "missing fuel.pump.flow fuel.regulator.follows-manifold"},
		},
		{
			// What is sold as E85 varies, so its name is a guess; methanol's is not.
			name:  "ethanol by name",
			specs: specs{car: "[fuel.cell]\nfilled-with = \"E85\"\n", driveline: "[tune]\nfuel = \"E10\"\n"},
			want: map[string]string{
				"fuel ethanol": "~0.85", "fuel alcohol": "~0.85",
				"driveline.tune map_ethanol": "0.10", "driveline.tune tank_ethanol": "~0.85",
			},
		},
		{
			name:  "ethanol as tested",
			specs: specs{car: "[fuel.cell]\nfilled-with = \"E85\"\nethanol = \"70 %\"\n", driveline: "[tune]\nfile = \"b12\"\n"},
			want:  map[string]string{"fuel ethanol": "70 %", "fuel alcohol": "70 %", "driveline.tune map_ethanol": "missing driveline.tune.fuel"},
		},
		{
			name:  "methanol",
			specs: specs{car: "[fuel.cell]\nfilled-with = \"methanol\"\n"},
			want:  map[string]string{"fuel ethanol": "0", "fuel alcohol": "1", "fuel demand": "missing driveline.engine"},
		},
		{
			// 175 lb/h is 106.55 L/h at 745 kg/m3; 213.1 over it is 2.
			name: "margin",
			specs: specs{
				car: "[fuel.pump]\nflow = \"213.1 L/h at 3.5 bar\"\n[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n",
				driveline: "[engine]\npower-crank = \"350 hp imperial at 6000 rpm\"\nconsumption = \"0.5 lb/(hp h)\"\nfuel = \"petrol\"\n" +
					"induction = \"naturally aspirated\"\n",
			},
			want: map[string]string{"fuel demand": "106.55 L/h", "fuel margin": "2"},
		},
	})
}

func TestClutch(t *testing.T) {
	runAll(t, []derivation{
		{
			// OpenStax College Physics, chapter 11: 100 N on a 5 to 1 pedal, a 0.500 cm
			// master and a 2.50 cm slave give 1.25e4 N and 2.5e7 Pa.
			name: "hydraulics",
			specs: specs{
				car:       "[clutch.master]\nbore = \"5.00 mm\"\nstop = \"25 mm\"\nstroke = \"40 mm\"\npedal = 5.0\n",
				driveline: "[clutch]\nslave-area = \"490.874 mm2\"\nrelease = \"12500 N\"\n",
			},
			want: map[string]string{
				"clutch ratio": "25", "clutch pedal_force": "100 N", "clutch pressure": "25.46 MPa", "clutch full_travel": "1 mm",
			},
		},
		{
			name: "no pedal stop",
			specs: specs{
				car:       "[clutch.master]\nbore = \"5.00 mm\"\nstop = \"none\"\nstroke = \"50 mm\"\n",
				driveline: "[clutch]\nslave-area = \"490.874 mm2\"\n",
			},
			want: map[string]string{"clutch full_travel": "2 mm", "clutch pedal_force": "missing driveline.clutch.release clutch.master.pedal"},
		},
		{
			// Two faces of 200 and 140 mm, friction 0.5, 13.19 kN: 1121 N m by uniform
			// wear (a textbook problem, worked by hand).
			name: "capacity",
			specs: specs{
				car:       "[clutch]\nfluid = \"DOT 4\"\n",
				driveline: "[clutch]\nplates = 1\nouter = \"200 mm\"\ninner = \"140 mm\"\nfriction = 0.5\nclamp = \"13.19 kN\"\n[engine]\ntorque = \"560 N m at 4800 rpm\"\n",
			},
			want: map[string]string{"clutch capacity": "1121 N m", "clutch engine_torque": "560 N m"},
		},
		{
			name:  "a lining inside out",
			specs: specs{car: "[clutch]\nfluid = \"DOT 4\"\n", driveline: "[clutch]\nplates = 1\nouter = \"140 mm\"\ninner = \"200 mm\"\nfriction = 0.5\nclamp = \"13 kN\"\n"},
			want:  map[string]string{"clutch capacity": "refused inner radius is 0.1"},
		},
	})
}

func TestIntoCar(t *testing.T) {
	// A quarter turn nose up takes what lies forward of the datum above it and what
	// lies above the datum behind it.
	got := IntoCar(r3.Vec{X: 1, Y: 2, Z: 0.5}, r3.Vec{X: -10, Z: 0.25}, math.Pi/2)
	if want := (r3.Vec{X: -10.5, Y: 2, Z: 1.25}); r3.Norm(r3.Sub(got, want)) > 1e-12 {
		t.Errorf("got %v, want %v", got, want)
	}
}

const hoseShop = `
[hoses.h8]
size = "-8"
bore = "0.370 in"
burst = "280 bar"
[hoses.h12]
size = "-12"
bore = "15.9 mm"
rated = "60 bar"
[hoses.h4]
size = "-4"
bore = "4.7 mm"
rated = "~200 bar"
`

func TestLines(t *testing.T) {
	const coolant = "[cooling]\ncarries = \"coolant\"\nheader = { cap = \"1.3 bar\", ports.out = \"38 mm bead\", ports.bleed = \"6 mm barb\" }\n"
	runAll(t, []derivation{
		{
			// A table of hydraulic tube: 1.34 US gal/min through 0.370 in run at 4 ft/s.
			// A quarter of 280 bar is 70 bar. The cap is the highest pressure, the
			// port's 115 °C the highest temperature.
			name: "coolant",
			specs: specs{
				car: coolant + "[lines.main]\nhose = \"1 m of h8, 2023-02\"\nfrom = [\"driveline.water-out\", \"hose\"]\nto = [\"cooling.header.out\", \"hose\"]\nnear = \"60 C\"\n" +
					"[lines.bleed]\nhose = \"1 m of h4\"\nfrom = [\"driveline.water-bleed\", \"hose\"]\nto = [\"cooling.header.bleed\", \"hose\"]\n",
				driveline: "[ports]\nwater-out = { end = \"38 mm bead\", gives = \"coolant\", hot = \"115 C\" }\nwater-bleed = { end = \"6 mm barb\", gives = \"coolant\" }\n" +
					"[pumps.water]\nflow = \"1.34 US gal/min at 3000 rpm\"\n",
				shop: hoseShop,
			},
			tolerance: 0.005,
			want: map[string]string{
				"lines.main velocity": "4 ft/s", "lines.main rating": "70 bar", "lines.main pressure": "1.3 bar",
				"lines.main temperature": "115 C", "lines.main age": "31 months",
				"lines.bleed velocity": "absent", "lines.bleed rating": "~200 bar", "lines.bleed age": "missing lines.bleed.hose.made",
			},
		},
		{
			// SAE 30 at 40 °C, 869 kg/m3 and 0.13 Pa s, 10 L/min through 15.9 mm:
			// v = 0.8394 m/s, Re = 89.2, and by Hagen and Poiseuille
			// 128 μ L Q / (π d⁴) = 13812 Pa over 1 m.
			name: "thick oil",
			specs: specs{
				car:       "[oil]\ncarries = \"engine oil\"\ntank.ports.out = \"-12 male 37-flare\"\n[lines.feed]\nhose = \"1 m of h12\"\nfrom = [\"oil.tank.out\", \"female 37-flare\"]\nto = [\"driveline.oil-in\", \"female 37-flare\"]\nsuction = false\n",
				driveline: "[ports]\noil-in = { end = \"-12 male 37-flare\", takes = \"engine oil\" }\n[pumps.oil]\nflow = \"10 L/min at 6000 rpm\"\nrelief = \"6 bar\"\n",
				shop:      hoseShop,
			},
			want: map[string]string{
				"lines.feed velocity": "0.8394 m/s", "lines.feed reynolds": "89.2", "lines.feed pressure_drop": "13812 Pa",
				"lines.feed pressure": "6 bar", "lines.feed temperature": "missing lines.feed.near",
			},
		},
		{
			// The relief valve of the pump is over the rail with boost, 5.1 bar. The
			// pump's 4.6 L/min run through 10.3 mm at 0.920 m/s.
			name: "fuel",
			specs: specs{
				car: "[fuel]\ncarries = \"fuel\"\n[fuel.cell]\nfilled-with = \"petrol\"\n[fuel.pump]\nflow = \"4.6 L/min at 8 bar\"\nrelief = \"8 bar\"\nports.out = \"-8 male 37-flare\"\n[fuel.regulator]\nbase = \"3.5 bar\"\nfollows-manifold = true\n" +
					"[lines.feed]\nhose = \"2 m of h8b\"\nfrom = [\"fuel.pump.out\", \"female 37-flare\"]\nto = [\"driveline.fuel-in\", \"female 37-flare\"]\n" +
					"[lines.stub]\nhose = \"1 m of nowhere-said\"\nfrom = [\"fuel.pump.out\", \"female 37-flare\"]\nto = \"open air\"\nworking = \"?\"\n",
				driveline: boosted + "[ports]\nfuel-in = { end = \"-8 male 37-flare\", takes = \"fuel\", max = \"5.1 bar\" }\n",
				shop:      "[hoses.h8b]\nbore = \"10.3 mm\"\n[hoses.nowhere-said]\nsize = \"-8\"\n",
			},
			want: map[string]string{
				"lines.feed pressure": "8 bar", "lines.feed velocity": "0.920 m/s", "lines.feed ethanol": "0",
				"lines.feed rating": "missing shop.hoses.h8b.rated", "lines.stub pressure": "missing lines.stub.working",
				"lines.stub velocity": "missing shop.hoses.nowhere-said.bore",
			},
		},
		{
			name:  "no hose kind",
			specs: specs{car: "[lines.x]\nto = \"open air\"\n"},
			want:  map[string]string{"lines.x rating": "missing lines.x.hose.kind", "lines.x pressure": "missing lines.x.working", "lines.x velocity": "absent"},
		},
		{
			// The driveline's port lies at -640 + 455, 190, 250 + 330 in the car: 300 mm
			// under the pump's.
			name: "from port to port",
			specs: specs{
				car: "[fits.it]\nfile = \"driveline.toml\"\nat = \"-640, 0, 250 mm\"\nnose-up = \"0 deg\"\n[fuel.pump]\nports.out = { end = \"-8 male 37-flare\", at = \"-185, 190, 880 mm\" }\n" +
					"[lines.feed]\nfrom = [\"fuel.pump.out\", \"female 37-flare\"]\nto = [\"driveline.fuel-in\", \"female 37-flare\"]\n",
				driveline: "[ports]\nfuel-in = { end = \"-8 male 37-flare\", at = \"455, 190, 330 mm\" }\n",
			},
			want: map[string]string{"lines.feed straight": "300 mm"},
		},
		{
			name: "nobody has measured where the driveline sits",
			specs: specs{
				car:       "[fuel.pump]\nports.out = { end = \"-8 male 37-flare\", at = \"-185, 190, 880 mm\" }\n[lines.feed]\nfrom = [\"fuel.pump.out\", \"female 37-flare\"]\nto = [\"driveline.fuel-in\", \"female 37-flare\"]\n",
				driveline: "[ports]\nfuel-in = { end = \"-8 male 37-flare\", at = \"455, 190, 330 mm\" }\n",
			},
			want: map[string]string{"lines.feed straight": "missing fits.driveline.at fits.driveline.nose-up"},
		},
	})
}

// TestBranch: a hose of less than six tenths of the widest bore carries only a
// part of the flow. What it is told stands, however often it is derived.
func TestBranch(t *testing.T) {
	text := "[oil]\ncarries = \"engine oil\"\n[oil.tank.ports]\n"
	lines, shop := "", ""
	for name, bore := range map[string]string{"main": "20 mm", "second": "12 mm", "gauge": "11.9 mm", "bleed": "20 mm"} {
		text += name + " = \"-12 male 37-flare\"\n"
		lines += "[lines." + name + "]\nhose = \"1 m of " + name + "\"\nfrom = [\"oil.tank." + name + "\", \"hose\"]\nto = \"open air\"\n"
		shop += "[hoses." + name + "]\nbore = \"" + bore + "\"\n"
	}
	lines = strings.Replace(lines, "[lines.bleed]\n", "[lines.bleed]\nclimbs = \"all the way\"\n", 1)
	d, first := specs{car: text + lines, driveline: "[pumps.oil]\nrelief = \"6 bar\"\n", shop: shop}.derive(t)
	got := map[string]string{}
	for _, l := range d.Lines {
		got[l.Name] = l.Flow
	}
	if diff := cmp.Diff(map[string]string{"main": "pump", "second": "pump", "gauge": "pressure", "bleed": "pressure"}, got); diff != "" {
		t.Error(diff)
	}
	expect(t, first, map[string]string{"lines.gauge pressure": "6 bar", "lines.gauge velocity": "absent", "lines.second velocity": "missing driveline.pumps.oil.flow"}, 1e-9)
	if diff := cmp.Diff(first, Derive(d), cmp.AllowUnexported(Input{})); diff != "" {
		t.Errorf("the second time: %s", diff)
	}
}

func TestJoints(t *testing.T) {
	line := func(metal, makeUp, port string) specs {
		return specs{
			car: "[oil]\ncarries = \"engine oil\"\ntank.ports.out = \"" + port + "\"\n[lines.l]\nto = { port = \"oil.tank.out\", end = \"-8 female 37-flare " + metal + "\"" + makeUp + " }\n",
		}
	}
	runAll(t, []derivation{
		{ // 270 to 350 lbf in.
			name: "machined swivel", specs: line("aluminium", ", make-up = \"machined-swivel\"", "-8 male 37-flare aluminium"),
			want: map[string]string{"lines.l.to torque_least": "270 lbf in", "lines.l.to torque_most": "350 lbf in"},
		},
		{ // NAVEDTRA 14018 table 5-9: 430 to 470 lbf in.
			name: "steel swivel", specs: line("steel", ", make-up = \"steel-swivel\"", "-8 male 37-flare steel"),
			want: map[string]string{"lines.l.to torque_least": "430 lbf in", "lines.l.to torque_most": "470 lbf in"},
		},
		{
			name: "aluminium governs", specs: line("steel", ", make-up = \"steel-swivel\"", "-8 male 37-flare aluminium"),
			want: map[string]string{"lines.l.to torque_least": "270 lbf in"},
		},
		{ // TM 55-1520-240: 210 to 250 lbf in on aluminium tube, 450 to 500 on steel.
			name: "soft tube", specs: line("aluminium", ", make-up = \"soft-tube\"", "-8 male 37-flare steel"),
			want: map[string]string{"lines.l.to torque_least": "210 lbf in", "lines.l.to torque_most": "250 lbf in"},
		},
		{
			name: "soft steel tube", specs: line("steel", ", make-up = \"soft-tube\"", "-8 male 37-flare steel"),
			want: map[string]string{"lines.l.to torque_least": "450 lbf in", "lines.l.to torque_most": "500 lbf in"},
		},
		{
			name: "soft tube of what", specs: line("steel", ", make-up = \"soft-tube\"", "-8 male 37-flare"),
			want: map[string]string{"lines.l.to torque_least": "missing oil.tank.ports.out.end.metal"},
		},
		{
			name: "no make-up", specs: line("steel", "", "-8 male 37-flare steel"),
			want: map[string]string{"lines.l.to torque_least": "missing lines.l.to.make-up", "lines.l.to torque_most": "missing lines.l.to.make-up"},
		},
		{
			name: "no flare", specs: specs{car: "[oil]\ntank.ports.out = \"38 mm bead\"\n[lines.l]\nto = [\"oil.tank.out\", \"38 mm hose\"]\n"},
			want: map[string]string{"lines.l.to torque_least": "absent"},
		},
	})
}

func TestThreadMatch(t *testing.T) {
	half := func(thread, gender string) *document.Half {
		h := &document.Half{Thread: &document.Thread{Text: thread}}
		h.Gender.V = gender
		return h
	}
	for _, c := range []struct {
		name, here, hereGender, there, thereGender, match, effect string
	}{
		{"same", "M10x1", "", "M10x1", "", "same", ""},
		{"brake union in an inch port", "M10x1", "male", "3/8-24", "female", "near", "jams"},
		{"the same seen from the port", "3/8-24", "female", "M10x1", "male", "near", "jams"},
		{"smaller male", "7/16-20", "male", "M12x1.25", "female", "near", "slack"},
		{"far apart", "M6x1", "male", "M12x1.5", "female", "apart", ""},
		{"nobody says which is male", "M10x1", "", "3/8-24", "female", "", ""},
	} {
		match, effect := threadMatch(half(c.here, c.hereGender), half(c.there, c.thereGender))
		if match != c.match || effect != c.effect {
			t.Errorf("%s: got %q, %q", c.name, match, effect)
		}
	}
	if match, _ := threadMatch(&document.Half{}, half("M10x1", "male")); match != "" {
		t.Errorf("no thread: %q", match)
	}
}

func TestMounts(t *testing.T) {
	mount := func(car string) specs {
		return specs{
			car:       "[fits.it]\nfile = \"driveline.toml\"\nat = \"-640, 0, 250 mm\"\nnose-up = \"0 deg\"\n[mounts.left]\nmeets = \"driveline.left\"\n" + car,
			driveline: "[mounts.left]\nat = \"250, 215, 20 mm\"\nholes = \"2 x M10x1.5 tapped 18 mm, into cast-aluminium\"\n",
		}
	}
	runAll(t, []derivation{
		{
			// The driveline's half lands at -390, 215, 270: 4 mm forward and 3 mm down
			// of the car's. 35 - 14 is 21 mm of thread into an 18 mm hole: 3 mm too long.
			name:  "offset and engagement",
			specs: mount("at = \"-394, 215, 273 mm\"\nbolts = \"2 x M10x1.5x35 10.9 hex\"\ngrip = \"14 mm\"\n"),
			want: map[string]string{
				"mounts.left offset": "5 mm", "mounts.left engagement": "18 mm", "mounts.left bottoms_by": "3 mm",
				"mounts.left engagement_diameters": "1.8",
				"mounts.left.bolts engagement":     "18 mm", "mounts.left.bolts engagement_diameters": "1.8",
			},
		},
		{
			name:  "a bolt too short for its grip",
			specs: mount("bolts = \"2 x M10x1.5x35 10.9 hex\"\ngrip = \"36 mm\"\n"),
			want:  map[string]string{"mounts.left engagement": "refused length past the grip", "mounts.left bottoms_by": "-19 mm", "mounts.left offset": "missing mounts.left.at"},
		},
		{
			name:  "no grip",
			specs: mount("bolts = \"2 x M10x1.5x35 10.9 hex\"\n"),
			want:  map[string]string{"mounts.left engagement": "missing mounts.left.grip"},
		},
		{
			name: "through bolts",
			specs: specs{
				car:       "[mounts.ecu]\nmeets = \"driveline.ecu\"\nbolts = \"4 x M5x0.8x16 8.8 hex\"\nholes = \"4 x 5.5 mm clear\"\n",
				driveline: "[mounts.ecu]\nholes = \"4 x 5.5 mm clear\"\n",
			},
			want: map[string]string{"mounts.ecu engagement": "absent"},
		},
	})

	d, _ := mount("at = \"-394, 215, 273 mm\"\n").derive(t)
	if got := d.Mounts[0].Calc.Towards; got != "forward and down" {
		t.Errorf("towards %q", got)
	}
	for v, want := range map[r3.Vec]string{
		{X: -4, Z: 1.9}: "back", {Y: -5}: "right", {X: 2, Y: 2, Z: 2}: "forward and left", {}: "",
	} {
		if got := towards(v); got != want {
			t.Errorf("towards %v: %q, want %q", v, got, want)
		}
	}
}

func TestFastenings(t *testing.T) {
	bolts := func(says string) specs {
		return specs{car: "[fasteners.x]\nbolts = { count = 1, " + says + " }\n"}
	}
	runAll(t, []derivation{
		{
			// ISO 898-1: M12, 84.3 mm2; class 8.8 proof load 48.9 kN. Oiled, K 0.18:
			// 0.18 × 0.90 × 48.9 kN × 12 mm = 95.1 N m, 0.18 × 0.525 × ... = 55.5 N m.
			name: "M12", specs: bolts(`thread = "M12x1.75", class = "8.8", threads = "oiled", into = "steel", engaged = "~12 mm"`),
			tolerance: 0.006,
			want: map[string]string{
				"fasteners.x.bolts stress_area": "84.3 mm2", "fasteners.x.bolts proof_load": "48.9 kN",
				"fasteners.x.bolts torque_most": "95.1 N m", "fasteners.x.bolts torque_least": "55.5 N m",
				"fasteners.x.bolts engagement_diameters": "~1", "fasteners.x.bolts engagement_needed": "1.2",
			},
		},
		{
			// SAE J429: 7/16-20 grade 8, 0.1187 in2 × 120 ksi = 14.24 kip = 63.4 kN.
			name: "inch", specs: bolts(`thread = "7/16-20", class = "grade-8"`),
			tolerance: 0.001,
			want: map[string]string{
				"fasteners.x.bolts stress_area": "0.1187 in2", "fasteners.x.bolts proof_load": "63.4 kN",
				"fasteners.x.bolts torque_least": "missing fasteners.x.bolts.threads",
				"fasteners.x.bolts engagement":   "missing fasteners.x.bolts.engaged",
			},
		},
		{ // A fine thread takes a quarter more than Roloff and Matek's 1.5.
			name: "fine thread in cast iron", specs: bolts(`thread = "M10x1.25", class = "8.8", into = "cast-iron"`),
			want: map[string]string{"fasteners.x.bolts engagement_needed": "1.875"},
		},
		{
			name: "insert", specs: bolts(`thread = "M8x1.25", class = "10.9", into = "insert"`),
			want: map[string]string{"fasteners.x.bolts engagement_needed": "1.5"},
		},
		{ // No row for 8.8 in an unknown aluminium: the rule of thumb.
			name: "aluminium of no known alloy", specs: bolts(`thread = "M8x1.25", class = "8.8", into = "aluminium"`),
			want: map[string]string{"fasteners.x.bolts engagement_needed": "2"},
		},
		{ // By trial: 1.4 diameters.
			name: "12.9 in steel", specs: bolts(`thread = "M8x1.25", class = "12.9", into = "steel"`),
			want: map[string]string{"fasteners.x.bolts engagement_needed": "1.4"},
		},
		{
			// Steel over 800 MPa under 10.9 asks for 1.0, and a quarter more in a fine thread.
			name: "a crankshaft", specs: bolts(`thread = "M10x1", class = "10.9", into = "heat-treated-steel"`),
			want: map[string]string{"fasteners.x.bolts engagement_needed": "1.25"},
		},
		{
			name: "12.9 in aluminium", specs: bolts(`thread = "M8x1.25", class = "12.9", into = "aluminium"`),
			want: map[string]string{"fasteners.x.bolts engagement_needed": "missing fasteners.x.bolts.into"},
		},
		{
			name: "stainless has no proof load here", specs: bolts(`thread = "M8x1.25", class = "A2-70", threads = "dry"`),
			want: map[string]string{"fasteners.x.bolts torque_most": "missing fasteners.x.bolts.torque-by"},
		},
		{ // Four fifths of it in cast aluminium; 0.18 × 0.90 × 33.64 kN × 10 mm is 54.5 N m.
			name: "tapped aluminium", specs: bolts(`thread = "M10x1.5", class = "8.8", threads = "oiled", into = "cast-aluminium"`),
			tolerance: 0.002,
			want:      map[string]string{"fasteners.x.bolts torque_most": "43.6 N m"},
		},
		{ // K 0.20 dry and 0.12 with anti-seize.
			name: "dry", specs: bolts(`thread = "M10x1.5", class = "8.8", threads = "dry", into = "steel"`),
			tolerance: 0.002,
			want:      map[string]string{"fasteners.x.bolts torque_most": "60.55 N m"},
		},
		{
			name: "anti-seize", specs: bolts(`thread = "M10x1.5", class = "8.8", threads = "anti-seize", into = "steel"`),
			tolerance: 0.002,
			want:      map[string]string{"fasteners.x.bolts torque_most": "36.33 N m"},
		},
		{
			name:  "a drain plug has no class",
			specs: specs{car: "[oil.tank]\ndrain = { count = 1, thread = \"M14x1.5\", threads = \"dry\" }\n"},
			want:  map[string]string{"oil.tank.drain torque_most": "missing oil.tank.drain.torque-by", "oil.tank.drain stress_area": "124.5 mm2"},
		},
		{
			name: "a coating without a nut factor", specs: bolts(`thread = "M8x1.25", class = "8.8", threads = "waxed"`),
			want: map[string]string{"fasteners.x.bolts torque_most": "missing fasteners.x.bolts.torque-by"},
		},
		{
			name: "nuts", specs: bolts(`thread = "M8x1.25", class = "8.8", nut = "nut"`),
			want: map[string]string{"fasteners.x.bolts engagement": "absent", "fasteners.x.bolts engagement_needed": "absent"},
		},
		{
			name: "rivets", specs: bolts(`head = "rivet"`),
			want: map[string]string{"fasteners.x.bolts stress_area": "absent", "fasteners.x.bolts torque_most": "absent"},
		},
	})
}

// TestTorqueBandHoldsPublishedTables: the band of an oiled thread, and for light
// metal four fifths of it, must hold every torque that the published tables give
// for class, thread and metal, on whatever basis of theirs.
func TestTorqueBandHoldsPublishedTables(t *testing.T) {
	sets := map[string][]string{
		"steel-0.14":     {"M5x0.8", "M6x1", "M8x1.25", "M10x1.5", "M12x1.75", "M14x2", "M16x2"},
		"cast-aluminium": {"M8x1.25", "M10x1.5", "M12x1.75"},
		"vdi-2230-fine":  {"M8x1", "M10x1.25", "M12x1.25", "M14x1.5", "M16x1.5"},
	}
	into := map[string]string{"steel-0.14": "steel", "cast-aluminium": "cast-aluminium", "vdi-2230-fine": "steel"}
	held := 0
	for set, threads := range sets {
		for _, thread := range threads {
			for _, class := range []string{"8.8", "10.9", "12.9"} {
				rows := tables.BoltTorques(set, thread, class)
				if len(rows) == 0 {
					continue
				}
				_, trace := specs{car: "[fasteners.x]\nbolts = { count = 1, thread = \"" + thread + "\", class = \"" + class +
					"\", threads = \"oiled\", into = \"" + into[set] + "\" }\n"}.derive(t)
				least, _ := trace.find("fasteners.x.bolts torque_least")
				most, _ := trace.find("fasteners.x.bolts torque_most")
				for _, row := range rows {
					if row.Friction > 0.12 {
						continue // drier than oiled
					}
					held++
					if row.Torque < least.Value || row.Torque > most.Value {
						t.Errorf("%s %s %s: %g N m is not within %.3g to %.3g", set, thread, class, row.Torque, least.Value, most.Value)
					}
				}
			}
		}
	}
	if held < 38 {
		t.Errorf("%d published torques held against the band", held)
	}
}

func TestShafts(t *testing.T) {
	shaft := func(says string) specs {
		return specs{
			car:       "[final-drive]\nratio = 4.0\n[shafts.s]\nfrom = [\"driveline.out\", \"65 mm flange\"]\n" + says,
			driveline: "[engine]\nrev-limit = \"8000 rpm\"\n[gearbox]\nratios = [2.8, 1.0, 0.8]\n[ports]\nout = \"65 mm flange\"\n",
		}
	}
	runAll(t, []derivation{
		{
			// Shigley, example 7-5: a 1 in steel shaft on a span of 31 in whirls at
			// 4970 rpm. 8000 rpm in the 0.8 gear is 10000.
			name: "solid steel", specs: shaft("tube = \"1 x 0.5 in steel\"\nlength = \"31 in\"\n"),
			want: map[string]string{"shafts.s whirling": "4970 rpm", "shafts.s top_speed": "10000 rpm", "shafts.s whirling_share": "2.012"},
		},
		{
			// A 3 in tube of 0.12 in wall, 48 in long: 4.68e6 to 4.77e6 times 4.0765/48²,
			// 8281 to 8440 rpm for steels of 29 to 30 Mpsi, by the uniform beam; not the
			// 5800 of a lumped mass.
			name: "tube", specs: shaft("tube = \"3 x 0.12 in steel\"\nlength = \"48 in\"\n"),
			tolerance: 0.012,
			want:      map[string]string{"shafts.s whirling": "8361 rpm"},
		},
		{
			name:  "driven by the axle",
			specs: specs{car: "[final-drive]\nratio = 4.0\nports.left = \"90 mm flange\"\n[shafts.s]\nfrom = [\"final-drive.left\", \"90 mm flange\"]\n", driveline: "[engine]\nrev-limit = \"8000 rpm\"\n[gearbox]\nratios = [2.8, 0.8]\n"},
			want:  map[string]string{"shafts.s top_speed": "2500 rpm"},
		},
		{
			// 8000 rpm in the 0.8 gear, wherever it stands in the list.
			name:  "highest gear first",
			specs: specs{car: "[shafts.s]\nfrom = [\"driveline.out\", \"65 mm flange\"]\n", driveline: "[engine]\nrev-limit = \"8000 rpm\"\n[gearbox]\nratios = [0.8, 1.0, 2.8]\n[ports]\nout = \"65 mm flange\"\n"},
			want:  map[string]string{"shafts.s top_speed": "10000 rpm"},
		},
		{
			name: "unknown metal", specs: shaft("tube = { outer = \"76 mm\", wall = \"2 mm\" }\nlength = \"1 m\"\n"),
			want: map[string]string{"shafts.s whirling": "missing shafts.s.tube.metal", "shafts.s whirling_share": "missing shafts.s.tube.metal"},
		},
	})
}

func TestCircuits(t *testing.T) {
	circuit := func(says string) specs {
		return specs{car: "[usual]\nwire-rated = \"105 C\"\n[electrics.modules.pdm]\nchannels.2 = { trips = \"20 A\" }\n[circuits.c]\n" + says}
	}
	runAll(t, []derivation{
		{ // AC 43.13-1B table 11-7: No. 6, 107 ft, 20 A drop 0.942 V; No. 14, 100 ft, 6.12 V.
			name: "drop", specs: circuit("wire = \"6 AWG\"\nlength = \"107 ft\"\nload = \"20 A\"\nreturn = \"chassis\"\n"),
			want: map[string]string{"circuits.c drop": "0.942 V", "circuits.c protection": "missing circuits.c.fuse"},
		},
		{
			name: "drop there and back", specs: circuit("wire = \"14 AWG\"\nlength = \"50 ft\"\nload = \"20 A\"\nreturn = \"wire\"\n"),
			want: map[string]string{"circuits.c drop": "6.12 V"},
		},
		{ // IEC 60228 class 5: 2.5 mm2 has 7.98 mohm/m.
			name: "metric", specs: circuit("wire = \"2.5 mm2\"\nlength = \"2 m\"\nload = \"~10 A\"\npurpose = \"earth\"\n"),
			want: map[string]string{"circuits.c resistance": "15.96 mohm", "circuits.c drop": "~0.1596 V"},
		},
		{ // AC 43.13-1B table 11-9: 18 AWG in a bundle, 105 °C wire, 6 A.
			name: "bundle", specs: circuit("wire = \"18 AWG\"\nrun = \"bundle\"\nfuse = \"7.5 A\"\n"),
			want: map[string]string{"circuits.c ampacity": "6 A", "circuits.c protection": "7.5 A", "circuits.c resistance": "missing circuits.c.length circuits.c.return"},
		},
		{ // 33 CFR 183.425: 20 A singly, and 0.85 of it in an engine space.
			name: "free", specs: circuit("wire = \"18 AWG\"\nrun = \"free\"\n"),
			want: map[string]string{"circuits.c ampacity": "20 A"},
		},
		{
			name: "hot bay", specs: circuit("wire = \"18 AWG\"\nrun = \"hot bay\"\n"),
			want: map[string]string{"circuits.c ampacity": "17 A"},
		},
		{
			name: "too thin for the table", specs: circuit("wire = \"30 AWG\"\nrun = \"free\"\n"),
			want: map[string]string{"circuits.c ampacity": "refused reaches down to"},
		},
		{
			name: "channel", specs: circuit("from = \"electrics.modules.pdm.2\"\nfuse = \"none\"\n"),
			want: map[string]string{"circuits.c protection": "20 A", "circuits.c ampacity": "missing circuits.c.wire circuits.c.run"},
		},
	})
}

func TestWeighing(t *testing.T) {
	runAll(t, []derivation{{
		// 55 % in front of 2.4 m; (20 × 1.4 + 10 × 1.5) / 2000 left of the middle.
		name: "four scales",
		specs: specs{car: "wheelbase = \"2400 mm\"\ntrack-front = \"1400 mm\"\ntrack-rear = \"1500 mm\"\n" +
			"[weighing]\nfront-left = \"~285 kg\"\nfront-right = \"265 kg\"\nrear-left = \"230 kg\"\nrear-right = \"220 kg\"\n"},
		want: map[string]string{"car mass": "~1000 kg", "car front_share": "~0.55", "car mass_behind_front": "~1080 mm", "car mass_left": "~21.5 mm"},
	}})
}
