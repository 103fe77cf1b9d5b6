package spec

import (
	"maps"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"fitup/spec/tree"
)

// outfitOf makes an outfit of files given as text.
func outfitOf(files map[string]string) *Outfit {
	fs := fstest.MapFS{}
	for name, text := range files {
		fs[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return NewOutfit(&tree.Tree{FS: fs})
}

// loadAll loads every file and returns its problems, one a line.
func loadAll(files map[string]string) (*Outfit, string) {
	o := outfitOf(files)
	for _, name := range slices.Sorted(maps.Keys(files)) {
		o.Load(name)
	}
	return o, problemLines(o)
}

func problemLines(o *Outfit) string {
	var lines []string
	for _, p := range o.Problems() {
		lines = append(lines, p.Error())
	}
	return strings.Join(lines, "\n")
}

const (
	carHead  = "[car]\nname = \"A\"\n"
	lineHead = "[driveline]\nname = \"D\"\n"
	shopHead = "[shop]\nname = \"S\"\n"
)

// shapeErrors are texts with an error that the loader tells. Each begins with
// the head of its file, or with none in x.toml.
var shapeErrors = []shapeError{
	// keys
	{"unknown key", "car.toml", "[fuel.cell]\nhold = \"45 L\"", `car.toml:4:1: "hold" is not a key of [fuel.cell]; did you mean "holds"?`},
	{"unknown key with nothing near", "car.toml", "[clock]\ncolour = \"red\"", `car.toml:4:1: "colour" is not a key of [clock]; its keys are read, runs, run-time`},
	{"unknown table", "car.toml", "[weighting]\nfuel = \"20 L\"", `car.toml:3:2: "weighting" is not a key of a car file; did you mean "weighing"?`},
	{"table of another file", "car.toml", "[engine]\nbore = \"86 mm\"", `car.toml:3:2: "engine" is not a key of a car file; it belongs in the driveline file`},
	{"car's table in a driveline", "driveline.toml", "[safety]\nseat = \"none\"", `driveline.toml:3:2: "safety" is not a key of a driveline file; it belongs in the car file`},
	{"unknown key in an inline table", "driveline.toml", "[ports]\nfuel-in = { end = \"-8 male 37-flare\", take = \"fuel\" }", `driveline.toml:4:39: "take" is not a key of [ports.fuel-in]; did you mean "takes"?`},
	{"unknown keys beside a wrong value", "car.toml", "[fuel.cell]\nholds = \"45 kg\"\nhold = \"45 L\"", "car.toml:4:13: kg is a mass; a volume is due, in L, mL, cm3, m3, in3, US gal, imp gal, US qt, imp qt, US pt, imp pt, US fl oz or imp fl oz\ncar.toml:5:1: \"hold\" is not a key of [fuel.cell]; did you mean \"holds\"?"},
	{"underscore for hyphen", "car.toml", "[fuel.cell]\nvent_valve = \"none\"", `car.toml:4:1: "vent_valve" is not a key of [fuel.cell]; did you mean "vent-valve"?`},

	// names
	{"capital in a name", "car.toml", "[access.Bonnet]\nfrom = \"outside front\"", `car.toml:3:9: "Bonnet" is not a name; small letters, digits and hyphens, such as bonnet`},
	{"underscore in a name", "car.toml", "[lines.fuel_feed]\nclips = \"280 mm\"", `car.toml:3:8: "fuel_feed" is not a name; small letters, digits and hyphens, such as fuel-feed`},
	{"reserved name", "car.toml", "[parts.driveline]\nmass = \"1 kg\"", `car.toml:3:8: "driveline" has a meaning of its own in references; another name`},
	{"reserved name none", "driveline.toml", "[mounts]\nnone = { light = true }", `driveline.toml:4:1: "none" has a meaning of its own in references; another name`},
	{"long pin", "driveline.toml", "[ports]\nloom-a = \"size-24 pins connector\"\n[pins.loom-a]\nignition-feed = { load = \"14 A\" }", `driveline.toml:6:1: "ignition-feed" is not the name of a pin; up to 8 letters and digits, as the connector prints them`},

	// types
	{"bare number for a length", "car.toml", "[shafts.prop]\nlength = 858", `car.toml:4:10: found the bare number 858; a length with its unit in quotes, such as "858 mm"`},
	{"bare float for a mass", "car.toml", "[weighing]\nfront-left = 258.5", `car.toml:4:14: found the bare number 258.5; a mass with its unit in quotes, such as "258.5 kg"`},
	{"text for a number", "car.toml", "[final-drive]\nratio = \"4.11\"", `car.toml:4:9: found the text "4.11"; a plain number, without quotes or unit`},
	{"text for a whole number", "driveline.toml", "[clutch]\nplates = \"two\"", `driveline.toml:4:10: found the text "two"; a whole number, without quotes`},
	{"float for a whole number", "driveline.toml", "[clutch]\nplates = 2.5", "driveline.toml:4:10: found the bare number 2.5; a whole number, without quotes"},
	{"number below nothing", "driveline.toml", "[clutch]\nfriction = -0.3", "driveline.toml:4:12: a number below nothing; write it without a sign"},
	{"number without end", "driveline.toml", "[clutch]\nfriction = inf", "driveline.toml:4:12: not a number to calculate with; write a plain number such as 1.5"},
	{"text for a flag", "car.toml", "[fuel.cell]\nwalled-off = \"yes\"", `car.toml:4:14: found the text "yes"; true or false, without quotes`},
	{"number for text", "car.toml", "[oil.catch-tank]\nvents = 3", "car.toml:4:9: found the bare number 3; text in quotes"},
	{"empty text", "car.toml", "[oil.catch-tank]\nvents = \"\"", "car.toml:4:9: there is nothing in the quotes; a value, or leave the key out"},
	{"empty quantity", "car.toml", "[weighing]\nheight = \" \"", "car.toml:4:10: there is nothing in the quotes; a value, or leave the key out"},
	{"number for a date", "car.toml", "[clock]\nread = 2025", `car.toml:4:8: found the bare number 2025; a date such as 2025-03-14, or what the label gives: "2025-03" or "2025"`},
	{"month that is not", "car.toml", "[safety.seat]\nmade = \"2022-13\"", "car.toml:4:9: 2022-13 does not exist; a month from 01 to 12 is due"},
	{"date in words", "car.toml", "[safety.seat]\nmade = \"June 2022\"", `car.toml:4:9: "June 2022" is no date; write it like 2022, 2022-06 or 2022-06-15`},
	{"value for a table", "car.toml", "[fuel]\ncell = 45", `car.toml:4:8: found the bare number 45; a table [fuel.cell] with keys such as at, box, mass, holds, or "none" if there is none`},
	{"text for a table", "car.toml", "[fuel]\ncell = \"a bladder\"", `car.toml:4:8: found the text "a bladder"; a table [fuel.cell] with keys such as at, box, mass, holds, or "none" if there is none`},
	{"false for a table", "car.toml", "[safety]\nhand-extinguisher = false", `car.toml:4:21: found false; a table [safety.hand-extinguisher] with keys such as standard, made, until, serviced, or "none" if there is none`},
	{"value for named tables", "car.toml", "[fuel]\nlift-pump = { ports = 3 }", `car.toml:4:23: found the bare number 3; [fuel.lift-pump.ports.NAME] for each of them, or "none" if there is none`},
	{"array of tables", "car.toml", "[[access]]\nfrom = \"outside front\"", `car.toml:3:1: found an array of tables; [access.NAME] for each of them, or "none" if there is none`},
	{"list for a number", "driveline.toml", "[clutch]\nouter = [\"184 mm\"]", `driveline.toml:4:9: found a list of 1; a length with its unit in quotes, such as "1 mm"`},
	{"empty list of numbers", "driveline.toml", "[gearbox]\nratios = []", `driveline.toml:4:10: the list is empty; what is in it, or "none" if there is nothing`},
	{"empty list of names", "car.toml", "[support]\nchocked = []", `car.toml:4:11: the list is empty; what is in it, or "none" if there is nothing`},
	{"text in a list of numbers", "driveline.toml", "[gearbox]\nratios = [2.8, \"2.0\"]", `driveline.toml:4:16: found the text "2.0"; a plain number, without quotes or unit`},
	{"table for a value", "car.toml", "[weighing]\nheight = { is = \"390 mm\" }", `car.toml:4:10: found a table; a length with its unit in quotes, such as "1 mm"`},
	{"number in names", "car.toml", "[fits.x]\nbehind = [\"none-such\", 3]", "car.toml:4:24: found the bare number 3; a name in quotes, or a list of names"},

	// units
	{"no unit", "car.toml", "[shafts.prop]\nlength = \"858\"", "car.toml:4:11: a number with no unit; a length is due, in mm, cm, m, in, ft, thou or km"},
	{"unit of another kind", "car.toml", "[weighing]\nheight = \"390 kg\"", "car.toml:4:15: kg is a mass; a length is due, in mm, cm, m, in, ft, thou or km"},
	{"unknown unit", "car.toml", "[weighing]\nheight = \"390 mmm\"", `car.toml:4:15: unknown unit "mmm"; did you mean mm? a length is due, in mm, cm, m, in, ft, thou or km`},
	{"number with a comma", "car.toml", "[weighing]\nheight = \"390,5 mm\"", "car.toml:4:11: a comma inside a number; write the decimal point, and no thousands mark"},
	{"below nothing", "car.toml", "[weighing]\nheight = \"-390 mm\"", "car.toml:4:11: a value below nought; a length of nought or more is due"},
	{"guess of a bad unit", "car.toml", "[weighing]\nheight = \"~ 390 mmm\"", `car.toml:4:17: unknown unit "mmm"; did you mean mm? a length is due, in mm, cm, m, in, ft, thou or km`},
	{"position with two numbers", "car.toml", "[fuel.cell]\nat = \"1, 2 mm\"", "car.toml:4:7: a position has three numbers; write it like -391, 216, 277 mm"},
	{"position with units inside", "car.toml", "[fuel.cell]\nat = \"1 mm, 2, 3 mm\"", "car.toml:4:9: a unit inside a position; the unit stands once, at the end"},
	{"box with one corner", "car.toml", "[solids.x]\nbox = [\"0, 0, 0 mm\"]", `car.toml:4:7: found a list of 1; two opposite corners such as ["0, -230, -130 mm", "590, 250, 520 mm"]`},
	{"bad corner", "car.toml", "[solids.x]\nbox = [\"0, 0, 0 mm\", \"1, 2, three mm\"]", "car.toml:4:29: no number here; a number is due"},
	{"range the wrong way", "shop.toml", "[stands.tall]\nheight = \"580 to 410 mm\"", "shop.toml:4:11: a range that runs backwards; write 410 mm last only if it is the higher"},
	{"not a range", "shop.toml", "[torque-wrenches.x]\nrange = \"60 N m\"", "shop.toml:4:10: not a range; write it like 0 to 10, with a unit: a torque is due, in N m, lbf ft, lbf in, kgf m, kN m or N mm"},
	{"no second half", "driveline.toml", "[engine]\npower-crank = \"360 kW\"", "driveline.toml:4:16: a value with nothing that it holds at; a power at a rotational speed is due"},
	{"bad point of a curve", "car.toml", "[fuel.pump]\nflow = [\"5.5 L/min at 3 bar\", \"4.6 L/min at 5 mm\"]", "car.toml:4:47: mm is a length; a pressure is due, in bar, kPa, MPa, psi, mbar, Pa, ksi, kgf/cm2, inHg or inH2O"},
	{"thread without pitch", "car.toml", "[sensors.x]\nthread = \"M10\"", "car.toml:4:11: M10 is made in several pitches; write M10x1.5 (coarse), M10x1.25 or M10x1"},
	{"no thread", "car.toml", "[sensors.x]\nthread = \"ten\"", `car.toml:4:11: "ten" is no thread; write it like M10x1.5, 7/16-20, 1/4-18 NPT or G1/4`},
	{"no wire size", "car.toml", "[circuits.x]\nwire = \"thick\"", "car.toml:4:9: no number here; write it like 2.5 mm2 or 18 AWG"},
	{"bad life", "car.toml", "[life.x]\nlasts = [\"40 h\", \"long\"]", "car.toml:4:19: no number here; a duration is due, in h, min, s, ms or d"},
	{"no size", "shop.toml", "[hoses.x]\nsize = \"eight\"", `shop.toml:4:9: "eight" is not a size; write it like -8, 38 mm, M10x1, 3/8-24, 1/8-27 NPT or size-24`},
	{"dash size that nobody makes", "shop.toml", "[hoses.x]\nsize = \"-7\"", "shop.toml:4:9: no fitting is made in size -7; the sizes beside it are -6 and -8"},
	{"gauge for absolute", "driveline.toml", "[tune]\nmanifold = \"0 to 4 bar\"", "driveline.toml:4:20: bar is a pressure; an absolute pressure is due, in bar absolute, kPa absolute, psi absolute, mbar absolute, MPa absolute or Pa absolute"},

	// words
	{"unknown word", "car.toml", "[fuel.cell]\nmetal = \"alumnium\"", `car.toml:4:10: "alumnium" is not a word used here; did you mean "aluminium"?`},
	{"unknown word with nothing near", "car.toml", "[support]\nfloor = \"bog\"", `car.toml:4:10: "bog" is not a word used here; one of "hard and level", "hard and sloping", "tarmac", "gravel", "grass"`},
	{"unknown word in a list", "car.toml", "[safety.fire-system]\nhandles = [\"cockpit\", \"roof\"]", `car.toml:4:24: "roof" is not a word used here; one of "cockpit", "outside left", "outside right", "scuttle left", "scuttle right", "roll hoop"`},
	{"flare alone in the long form", "shop.toml", "[adaptors.x.one]\nform = \"flare\"", `shop.toml:4:9: "flare" alone does not say which; 37-flare or 45-flare? they share threads in some sizes and leak on one another`},

	// phrases
	{"flare alone", "car.toml", "[parts.tee]\nports.run = \"-6 male flare\"", `car.toml:4:22: "flare" alone does not say which; 37-flare or 45-flare? they share threads in some sizes and leak on one another`},
	{"unknown word in an end", "car.toml", "[parts.tee]\nports.run = \"-6 mail 37-flare\"", `car.toml:4:17: "mail" is not a word used here; an end such as "-8 male 37-flare 90deg steel"`},
	{"word that says nothing", "car.toml", "[parts.tee]\nports.run = \"-6 male 37-flare shiny\"", `car.toml:4:31: "shiny" is not a word used here; an end such as "-8 male 37-flare 90deg steel"`},
	{"two sizes", "car.toml", "[parts.tee]\nports.run = \"-6 -8 male 37-flare\"", `car.toml:4:17: "-8" says the size a second time; say it once`},
	{"dash size in an end", "car.toml", "[parts.tee]\nports.run = \"-7 male 37-flare\"", "car.toml:4:14: no fitting is made in size -7; the sizes beside it are -6 and -8"},
	{"empty end", "car.toml", "[parts.tee]\nports.run = \"\"", `car.toml:4:14: there is nothing in the quotes; an end such as "-8 male 37-flare 90deg steel"`},
	{"number for an end", "car.toml", "[parts.tee]\nports.run = 6", `car.toml:4:13: found the bare number 6; an end such as "-8 male 37-flare 90deg steel", or a table`},
	{"bad unit of torque", "car.toml", "[mounts.x]\nbolts = \"2 x M10x1.5x35 10.9 hex, 50 Nmm2\"", `car.toml:4:38: unknown unit "Nmm2"; did you mean N mm? a torque is due, in N m, lbf ft, lbf in, kgf m, kN m or N mm`},
	{"torque in joules", "car.toml", "[mounts.x]\nbolts = \"2 x M10x1.5x35 10.9 hex, 50 kJ\"", "car.toml:4:38: kJ is an energy; a torque is due, in N m, lbf ft, lbf in, kgf m, kN m or N mm"},
	{"bolt without pitch", "car.toml", "[mounts.x]\nbolts = \"2 x M10 10.9 hex\"", "car.toml:4:14: M10 is made in several pitches; write M10x1.5 (coarse), M10x1.25 or M10x1"},
	{"length for pitch", "car.toml", "[mounts.x]\nbolts = \"2 x M10x35 10.9 hex\"", "car.toml:4:14: no thread has that pitch; the diameter comes first, then the pitch, as M10x1.5"},
	{"unknown class", "car.toml", "[mounts.x]\nbolts = \"2 x M10x1.5x35 10.8 hex\"", `car.toml:4:25: "10.8" is not a word used here; did you mean "10.9"?`},
	{"unknown lock", "car.toml", "[mounts.x]\nbolts = \"2 x M10x1.5x35 10.9 hex, 50 N m, wyre\"", `car.toml:4:43: "wyre" is not a word used here; did you mean "wire"?`},
	{"holes", "car.toml", "[mounts.x]\nholes = \"2 x 10.5 mm cleer, 70 mm apart\"", `car.toml:4:22: "cleer" is not a word used here; did you mean "clear"?`},
	{"short side first", "car.toml", "[mounts.x]\nholes = \"4 x 10.5 mm clear, 80 x 110 mm\"", "car.toml:4:34: the short side, 110 mm, is longer than the long one, 80 mm; the long side first"},
	{"bad axis", "car.toml", "[mounts.x]\nholes = \"4 x 10.5 mm clear, 110 x 80 mm, long-side sideways\"", `car.toml:4:52: "sideways" is not a word used here; one of "fore-aft", "across", "upright"`},
	{"hose", "car.toml", "[lines.x]\nhose = \"2.95 of ptfe-8\"", `car.toml:4:9: "2.95" means nothing here; length, kind and date of a hose such as "2.95 m of ptfe-8, 2023-02"`},
	{"hose date", "car.toml", "[lines.x]\nhose = \"2.95 m of ptfe-8, 2023-14\"", "car.toml:4:27: 2023-14 does not exist; a month from 01 to 12 is due"},
	{"tube", "car.toml", "[shafts.x]\ntube = \"76.2 x 1.65 steel\"", `car.toml:4:9: "76.2" means nothing here; a tube, or a bar by half its diameter as the wall, such as "45 x 2.5 mm cold-drawn steel"`},
	{"injectors", "driveline.toml", "[engine]\ninjectors = \"5 x 1050 mL/min\"", `driveline.toml:4:14: "5" means nothing here; number and flow of the injectors such as "5 x 1050 mL/min at 3.0 bar"`},
	{"injector flow", "driveline.toml", "[engine]\ninjectors = \"5 x 1050 mL at 3 bar\"", "driveline.toml:4:23: mL is a volume; a volume flow is due, in L/min, L/h, mL/min, L/s, m3/h, m3/s, US gal/min, imp gal/min, US gal/h, imp gal/h or ft3/min"},
	{"end and port swapped", "car.toml", "[lines.x]\nto = [\"female 37-flare\", \"driveline.fuel-in\"]", `car.toml:4:6: where and what are swapped; ["driveline.fuel-in", "female 37-flare"]`},
	{"too many strings", "car.toml", "[lines.x]\nto = [\"driveline.a\", \"hose\", \"10 N m\", \"dry\"]", `car.toml:4:6: found a list of 4; where, what and how tight, such as ["driveline.fuel-in", "female 37-flare 90deg", "35 N m, oiled"]`},
	{"number for a line end", "car.toml", "[lines.x]\nto = 3", `car.toml:4:6: found the bare number 3; where, what and how tight, such as ["driveline.fuel-in", "female 37-flare 90deg", "35 N m, oiled"]`},
	{"number in a line end", "car.toml", "[lines.x]\nto = [\"driveline.a\", 3]", "car.toml:4:22: found the bare number 3; text in quotes; where more is to be said, a table in place of the list"},
	{"bad end of a line", "car.toml", "[lines.x]\nto = [\"driveline.a\", \"female 37-flair\"]", `car.toml:4:30: "37-flair" is not a word used here; did you mean "37-flare"?`},
	{"bad joining", "car.toml", "[lines.x]\nto = [\"driveline.a\", \"female 37-flare\", \"35 N m, oild\"]", `car.toml:4:50: "oild" is not a word used here; did you mean "oiled"?`},
	{"unknown key in the long form of a phrase", "car.toml", "[mounts.x.bolts]\ncount = 2\ntorqe = \"50 N m\"", `car.toml:5:1: "torqe" is not a key of [mounts.x.bolts]; did you mean "torque"?`},

	// several
	{"gap between three", "car.toml", "[gaps.x]\nbetween = [\"a b\", \"c d\", \"e f\"]", `car.toml:4:11: a gap is between two things, not 3; two names such as ["exhaust.pipes.front", "cabin floor"]`},
	{"malformed waiver", "car.toml", "[waivers.x]\nrule = \"lines.age\"\nuntil = \"soon\"", "car.toml:3:1: [waivers.x] does not say enough; also due: \"on\", \"why\"\ncar.toml:5:10: \"soon\" is no date; write it like 2022, 2022-06 or 2022-06-15"},
	{"port and mount of one name", "driveline.toml", "[ports]\nleft = \"-8 male 37-flare\"\n[mounts]\nleft = { light = true }", `driveline.toml:6:1: "left" is the name of a port already; another name, so that driveline.left means one thing`},
	{"all at once", "car.toml", "[fuel.cell]\nholds = 45\nmetal = \"wood\"\n[lines.x]\nhoes = 1", "car.toml:4:9: found the bare number 45; a volume with its unit in quotes, such as \"45 L\"\ncar.toml:5:10: \"wood\" is not a word used here; one of \"aluminium\", \"anodised-aluminium\", \"cast-aluminium\", \"steel\", \"plated-steel\", \"stainless\", \"cast-iron\", \"brass\", \"copper\", \"bronze\", \"titanium\", \"zinc\", \"nylon\", \"carbon\"\ncar.toml:7:1: \"hoes\" is not a key of [lines.x]; did you mean \"hose\"?"},
	{"syntax hides the rest", "car.toml", "[fuel.cell]\nholds = 45 L\nmetal = \"wood\"", `car.toml:4:12: something follows on the same line; one NAME = VALUE a line, and a figure with its unit in quotes, "12 mm"`},

	// references
	{"dead port", "car.toml", "[parts.tee]\nports.run = \"-6 male 37-flare\"\n[lines.x]\nto = \"parts.te.run\"", `car.toml:6:7: there is no port "parts.te.run"; did you mean "parts.tee.run"?`},
	{"part for a port", "car.toml", "[parts.tee]\nports.run = \"-6 male 37-flare\"\n[lines.x]\nto = [\"parts.tee\", \"female 37-flare\"]", `car.toml:6:8: "parts.tee" is not a port; one of its ports: parts.tee.run`},
	{"part with no ports for a port", "car.toml", "[parts.tee]\nmass = \"1 kg\"\n[lines.x]\nfrom = \"parts.tee\"", `car.toml:6:9: "parts.tee" is not a port; give it a port: [parts.tee.ports.NAME]`},
	{"chassis is no end of a hose", "car.toml", "[lines.x]\nto = \"chassis\"", `car.toml:4:7: there is no port "chassis"; a port as PART.PORT, or driveline.PORT`},
	{"dead terminal", "car.toml", "[electrics.posts.main]\nend = \"M8 stud\"\n[circuits.x]\nto = \"electrics.posts.mian\"", `car.toml:6:7: there is no terminal "electrics.posts.mian"; did you mean "electrics.posts.main"?`},
	{"dead channel", "car.toml", "[electrics.modules.pdm.channels]\n1 = { trips = \"20 A\" }\n[circuits.x]\nfrom = \"electrics.modules.pdm.2\"", `car.toml:6:9: there is no terminal "electrics.modules.pdm.2"; did you mean "electrics.modules.pdm.1"?`},
	{"dead pin", "car.toml", "[plugs.loom-a]\ntail = \"1 m\"\n[pins.loom-a]\nA = { load = \"1 A\" }\n[circuits.x]\nfrom = \"pins.loom-a.B\"", `car.toml:8:9: there is no terminal "pins.loom-a.B"; did you mean "pins.loom-a.A"?`},
	{"pins of no plug", "car.toml", "[plugs.loom-a]\ntail = \"1 m\"\n[pins.loom-b]\nA = { load = \"1 A\" }", `car.toml:5:7: there is no plug "loom-b" for these pins; did you mean "loom-a"?`},
	{"pins of no port", "driveline.toml", "[pins.loom-b]\nA = { load = \"1 A\" }", `driveline.toml:3:7: there is no port "loom-b" for these pins; the name of a port`},
	{"mount on the car", "car.toml", "[mounts.left]\nmeets = \"left\"", `car.toml:4:9: "left" is not on the driveline; driveline.NAME, with the name of the driveline's half`},
	{"dead access panel", "car.toml", "[access.bonnet]\nfrom = \"outside front\"\n[fuel.cell]\nbehind = [\"bonet\"]", `car.toml:6:11: there is no access panel "bonet"; did you mean "bonnet"?`},
	{"dead access panel with nothing near", "car.toml", "[fuel.cell]\nbehind = \"floor\"", `car.toml:4:10: there is no access panel "floor"; a name from [access], or the path of a part, such as cooling.radiator`},
	{"dead part in behind", "car.toml", "[cooling.radiator]\nholds = \"2 L\"\n[fuel.cell]\nbehind = [\"cooling.radiatr\"]", `car.toml:6:11: there is no "cooling.radiatr" in this file; did you mean "cooling.radiator"?`},
	{"panel in a driveline", "driveline.toml", "[parts.x]\nbehind = \"bonnet\"", `driveline.toml:4:10: "bonnet" is not a part of the driveline; the path of a part, such as parts.shield; panels are for each car to name`},
	{"dead circuit", "car.toml", "[electrics.isolator]\nkills = [\"starter\"]\n[circuits.startr]\nwire = \"50 mm2\"", `car.toml:4:10: there is no circuit "starter"; did you mean "startr"?`},
	{"dead drain", "driveline.toml", "[fluids.oil]\ndrain = \"smp\"\n[drains.sump]\nat = \"?\"", `driveline.toml:4:9: there is no drain plug "smp"; did you mean "sump"?`},
	{"dead sensor", "driveline.toml", "[tune]\nexpects = [\"crank\", \"car.pedal\"]\n[sensors.cam]\nkind = \"hall\"", `driveline.toml:4:12: there is no sensor "crank"; the name of a sensor in this file: cam`},
	{"dead part with a life", "car.toml", "[life.x]\nof = \"fuel.pump\"", `car.toml:4:6: there is no "fuel.pump" in this file; the path of a part, such as cooling.radiator`},
	{"stand under nothing", "car.toml", "[support.stands.x]\nunder = \"sump\"", `car.toml:4:9: there is no "sump" in this file; the path of a part, such as cooling.radiator`},
	{"gap to nothing", "car.toml", "[gaps.x]\nbetween = [\"exhaust.pipes.front\", \"cabin floor\"]", `car.toml:4:12: there is no "exhaust.pipes.front" in this file; the path of a part, such as cooling.radiator`},
	{"own port of a driveline", "driveline.toml", "[ports]\nfuel-in = \"-8 male 37-flare\"\n[lines.x]\nto = \"driveline.fuel-inn\"", `driveline.toml:6:7: there is no port "driveline.fuel-inn"; did you mean "driveline.fuel-in"?`},

	// kinds
	{"no kind", "x.toml", "[lines.x]\nclips = \"1 m\"\n", "x.toml:1:1: none of the tables [car], [driveline] and [shop] is here; the one that says what the file describes, with a name in it"},
	{"no kind but near", "x.toml", "[carr]\nname = \"A\"\n", "x.toml:1:2: none of the tables [car], [driveline] and [shop] is here; did you mean [car]?"},
	{"empty file", "x.toml", "", "x.toml:1:1: none of the tables [car], [driveline] and [shop] is here; the one that says what the file describes, with a name in it"},
	{"two kinds", "x.toml", "[driveline]\nname = \"A\"\n[car]\nname = \"B\"\n", "x.toml:3:2: [car] in the file of a driveline; one of [car], [driveline] and [shop]; move [car] and what belongs to it to a file of its own"},
	{"no name", "x.toml", "[car]\nuse = \"road\"\n", `x.toml:1:1: [car] does not say enough; also due: "name"`},
	{"name unknown", "x.toml", "[shop]\nname = \"?\"\n", `x.toml:1:1: [shop] does not say enough; also due: "name"`},
	{"kind as a value", "x.toml", "car = \"A\"\n", `x.toml:1:7: found the text "A"; a table [car] with keys such as name, use, stage, driveline`},
}

type shapeError struct{ name, file, text, want string }

// whole is the text with the head of its file.
func (e shapeError) whole() string {
	return map[string]string{"car.toml": carHead, "driveline.toml": lineHead, "shop.toml": shopHead}[e.file] + e.text
}

func TestShapeErrors(t *testing.T) {
	for _, c := range shapeErrors {
		t.Run(c.name, func(t *testing.T) {
			_, got := loadAll(map[string]string{c.file: c.whole()})
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Error(diff)
			}
		})
	}
}
