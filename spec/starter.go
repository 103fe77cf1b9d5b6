package spec

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"unicode"
)

// Starter is the text of a new file with what matters most in it, ready to be
// filled in. It loads without a problem: what has to be measured is "?". name is
// what the outfit calls the thing. For a car a driveline may be given: the text
// then holds the car's half of every port and mount of it.
func Starter(kind FileKind, name string, driveline *File) string {
	name = cmp.Or(printable(name), "unnamed")
	var s starter
	switch kind {
	case KindCar:
		s.car(name, driveline)
	case KindDriveline:
		s.driveline(name)
	case KindShop:
		s.shop(name)
	}
	return s.String()
}

// printable is text less what cannot stand in one line of a file.
func printable(text string) string {
	return strings.TrimSpace(strings.Map(func(r rune) rune {
		if unicode.IsPrint(r) {
			return r
		}
		return -1
	}, strings.ToValidUTF8(text, "")))
}

// A starter writes the text of a new file.
type starter struct{ strings.Builder }

func (s *starter) line(format string, args ...any) { fmt.Fprintf(s, format+"\n", args...) }

// key writes a key with a value in quotes, and a remark.
func (s *starter) key(name, value, remark string) {
	text := fmt.Sprintf("%-12s = %q", name, value)
	if remark != "" {
		text = fmt.Sprintf("%-44s # %s", text, remark)
	}
	s.line("%s", text)
}

func (s *starter) states() {
	s.line(`#   "?"        it matters, and is not measured yet`)
	s.line(`#   "none"     looked, there is none`)
	s.line(`#   "~12 kg"   a guess`)
	s.line(`#   left out   not said`)
}

func (s *starter) shop(name string) {
	s.line("# What the workshop has. Cars and drivelines name this file in their `shop` key.")
	s.states()
	s.line("\n[shop]")
	s.key("name", name, "")
	s.key("headroom", "?", "clear height over the work")
	s.key("floor", "?", inProse(floorWords{}))
	s.key("extinguisher", "?", "what is within reach of the work")
	s.line("\n# [hoses.NAME], one for each kind of hose. Rated is working pressure, not burst.")
	s.line("[hoses.ptfe-8]")
	s.key("size", "?", "as it is sold: -8, or 38 mm")
	s.key("liner", "?", inProse(linerWords{}))
	for _, k := range []string{"bore", "rated", "bend", "hot"} {
		s.key(k, "?", "")
	}
	s.line("\n# [stands.NAME], one for each kind of stand.")
	s.line("[stands.tall]")
	s.key("rated", "?", "as its label reads")
	s.key("basis", "?", "each or pair: without it the rating says nothing")
	s.key("height", "?", "lowest to highest saddle, such as 410 to 580 mm")
	s.key("lock", "?", inProse(lockWords{}))
	s.key("base-reach", "?", "from its axis to the nearest tipping edge")
	s.line("\n[hoists.crane]")
	s.key("hook-to", "?", "highest hook")
	s.key("tackle", "?", "mass of hook, leveller and chains")
	s.line("[hoists.crane.booms.1]")
	s.key("reach", "?", "boom length in this position")
	s.key("rated", "?", "load on the plate for this position")
	s.line("\n[slings.chain]")
	s.key("rated", "?", "working load limit")
	s.key("basis", "?", "leg or whole")
}

func (s *starter) driveline(name string) {
	s.line("# Everything that leaves with the driveline. This file names no car.")
	s.line("# Gives and takes are as seen from the driveline. An end is what you see with the hose off.")
	s.states()
	s.line("\n[driveline]")
	s.key("name", name, "")
	s.key("datum", "?", "the point that positions start from, such as crank centreline at the back face of the block")
	s.line("\n[clock]")
	for _, k := range []string{"read", "runs", "run-time"} {
		s.key(k, "?", "")
	}
	s.line("\n[engine]")
	s.key("layout", "?", "cylinders, how they lie, and the exhaust side")
	s.key("power-crank", "?", "such as 200 kW at 7000 rpm; or power-wheels")
	s.key("torque", "?", "such as 300 N m at 5000 rpm")
	s.key("rev-limit", "?", "")
	s.key("induction", "?", inProse(inductionWords{}))
	s.key("fuel", "?", inProse(fuelWords{}))
	s.line("\n# Every place where a car must meet it: form and size of the end, where it is, what it gives or takes.")
	s.line("[ports]")
	s.line(`fuel-in = { end = "?", at = "?", takes = "fuel" }`)
	s.line(`water-out = { end = "?", at = "?", gives = "coolant", max = "?", hot = "?" }`)
	s.line("\n# The face and the holes on the driveline; bracket, rubber and bolts are the car's.")
	s.line("[mounts.engine-left]")
	s.key("at", "?", "")
	s.key("holes", "?", `such as 2 x M10x1.5 tapped 25 mm, 70 mm apart fore-aft`)
	s.line("\n[weighing]")
	s.key("mass", "?", "as lifted, drained")
	s.key("at", "?", "its centre of mass")
	s.key("unsure", "?", "how far the centre of mass may be from that, any way")
	s.line("\n# Points that it may hang from.")
	s.line("[lift.front]")
	s.key("at", "?", "")
	s.key("rated", "?", "working load limit marked on it")
}

func (s *starter) car(name string, driveline *File) {
	s.line("# Everything that stays when the driveline leaves. Of each joint this file says")
	s.line("# the car's half, and names its mate.")
	s.states()
	s.line("\n[car]")
	s.key("name", name, "")
	s.key("use", "?", inProse(useWords{}))
	s.key("driveline", "none", "its file, relative to this one; none for an empty bay")
	s.key("shop", "none", "file of hoses, stands and hoist, relative to this one")
	s.key("origin", "?", "where x forward, y left and z up start")
	s.key("front-axle", "?", "the point on the ground below the middle of the front axle line, from there")
	s.key("wheelbase", "?", "")
	s.key("track-front", "?", "between tyre centres")
	s.key("track-rear", "?", "")
	s.line("\n[weighing]")
	s.key("date", "?", "")
	for _, wheel := range []string{"front-left", "front-right", "rear-left", "rear-right"} {
		s.key(wheel, "?", "")
	}
	s.key("height", "?", "centre of mass above the ground")
	s.key("driveline", "?", "file name of the one that was in it, or none")
	s.key("driver", "?", "true if the driver sat in it")
	s.line("\n[support]")
	s.key("floor", "?", inProse(floorWords{}))
	s.key("wheels-down", "?", "wheels that stay on the floor, or none")
	for _, corner := range []string{"front-left", "front-right", "rear-left", "rear-right"} {
		s.line("\n[support.stands.%s]", corner)
		s.key("stand", "?", "kind of stand, from the shop file")
		s.key("at", "?", "the pad it stands under, at ride height")
		s.key("under", "?", "chassis, or a part")
		s.key("height", "?", "saddle height as set")
	}
	if driveline != nil && driveline.Driveline != nil {
		s.halves(driveline)
	}
}

// halves writes the car's half of everything on a driveline that a car has to
// meet.
func (s *starter) halves(driveline *File) {
	d := driveline.Driveline
	stem := Stem(driveline.Name)
	s.line("\n# --- for %s", cmp.Or(printable(d.Driveline.Name.Text), stem))
	if nameForm.MatchString(stem) && !slices.Contains(reserved, stem) {
		s.line("\n[fits.%s]", stem)
		s.key("at", "?", "where its datum lands, in the car's axes")
		s.key("nose-up", "?", "")
		s.key("leaves", "?", "the way out, in order: "+inProse(directionWords{}))
	}
	for name := range d.Mounts.All() {
		s.line("\n[mounts.%s]", name)
		s.key("meets", acrossPrefix+name, "")
		s.key("at", "?", "centre of its pattern, in the car's axes")
		s.key("holes", "?", "such as "+holesPhrase.example)
		s.key("bolts", "?", "such as "+fasteningPhrase.example)
		s.key("grip", "?", "thickness that the bolts pass through, washers included")
		s.key("rubber", "?", "")
	}
	for name, port := range d.Ports.All() {
		s.half(name, port)
	}
}

// half writes the car's half of one port, as the form of its end asks.
func (s *starter) half(name string, port *Port) {
	across := acrossPrefix + name
	said := "its end is " + cmp.Or(endWords(port.End), "not said")
	switch port.End.Form.V {
	case "connector":
		s.line("\n[plugs.%s]", name)
		s.line("%-44s # %s", fmt.Sprintf("meets        = [%q, \"?\"]", across), said)
		s.key("at", "?", "where it is clipped")
	case "stud", "ring", "blade":
		s.line("\n[circuits.%s]", name)
		s.line("%-44s # %s", fmt.Sprintf("to           = [%q, \"?\"]", across), said)
		for _, k := range []string{"wire", "length", "load", "fuse"} {
			s.key(k, "?", "")
		}
	case "rod", "rod-end":
		s.line("\n[rods.%s]", name)
		s.line("%-44s # %s", fmt.Sprintf("from         = [%q, \"?\"]", across), said)
		s.key("length", "?", "between centres")
	case "spline", "flange":
		s.line("\n[shafts.%s]", name)
		s.line("%-44s # %s", fmt.Sprintf("from         = [%q, \"?\"]", across), said)
		s.key("length", "?", "face to face at ride height")
		s.key("bolts", "?", "at each end")
	default:
		end, other := "to", "from"
		if port.Gives.Given() {
			end, other = other, end
		}
		s.line("\n[lines.%s]", name)
		s.key("hose", "?", "such as "+hosePhrase.example)
		s.line("%-44s # %s", fmt.Sprintf("%-12s = [%q, \"?\"]", end, across), said)
		s.key(other, "?", `["PART.PORT", "end"]`)
	}
}

// endWords is the phrase of an end.
func endWords(end End) string {
	var words []string
	for _, leaf := range []Leaf{&end.Size, &end.Gender, &end.Form, &end.Bend, &end.Metal} {
		if leaf.Said() == Given {
			text, _ := leaf.Written()
			words = append(words, text)
		}
	}
	if end.Key.Given() {
		words = append(words, "key-"+end.Key.V)
	}
	return strings.Join(words, " ")
}

func inProse(v vocabulary) string { return strings.Join(v.Words(), ", ") }
