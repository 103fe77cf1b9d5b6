package spec

import (
	"fmt"
	"math"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
)

// TestValues reads one value of each form and holds what rules see of it against
// the figure by the definitions of NIST SP 811, or against the text itself.
func TestValues(t *testing.T) {
	for _, c := range []struct {
		name string
		leaf Leaf
		raw  any
		want any
	}{
		{"length", &Length{}, "858 mm", 0.858},
		{"area", &Area{}, "620 mm2", 620e-6},
		{"volume", &Volume{}, "45 L", 0.045},
		{"mass", &Mass{}, "258 kg", 258.0},
		{"force", &Force{}, "7600 N", 7600.0},
		{"pressure", &Pressure{}, "3.5 bar", 350e3},
		{"torque", &Torque{}, "50 N m", 50.0},
		{"power", &Power{}, "22 kW", 22e3},
		{"flow", &VolumeFlow{}, "6 L/min", 1e-4},
		{"mass flow", &MassFlow{}, "1800 kg/h", 0.5},
		{"current", &Current{}, "14 A", 14.0},
		{"voltage", &Voltage{}, "13.5 V", 13.5},
		{"charge", &Charge{}, "30 Ah", 108e3},
		{"duration", &Duration{}, "2 h", 7200.0},
		{"ratio", &Ratio{}, "13 %", 0.13},
		{"count", &Count{}, "340 runs", 340.0},
		{"consumption", &Consumption{}, "360 g/kWh", 1e-7},
		{"vacuum", &Vacuum{}, "-0.2 bar", -20e3},
		{"temperature", &Temperature{}, "-50 C", 223.15},
		{"range of length", &LengthRange{}, "-18 to 22 mm", []any{-0.018, 0.022}},
		{"range of pressure", &PressureRange{}, "0 to 10 bar", []any{0.0, 1e6}},
		{"range of absolute pressure", &AbsoluteRange{}, "0 to 4 bar absolute", []any{0.0, 4e5}},
		{"range of torque", &TorqueRange{}, "10 to 60 N m", []any{10.0, 60.0}},
		{"one point of a curve", &FlowsAtPressure{}, "6 L/min at 3 bar", []any{[]any{1e-4, 3e5}}},
		{"curve", &FlowsAtPressure{}, []any{"6 L/min at 3 bar", "3 L/min at 6 bar"}, []any{[]any{1e-4, 3e5}, []any{5e-5, 6e5}}},
		{"power at speed", &PowerAtSpeed{}, "360 kW at 3000 rpm", []any{360e3, 100 * math.Pi}},
		{"text", &Text{}, "rollover", "rollover"},
		{"flag", &Flag{}, true, true},
		{"whole number as a number", &Number{}, int64(5), 5.0},
		{"number", &Number{}, 4.11, 4.11},
		{"whole number", &Whole{}, int64(2), 2},
		{"numbers", &Numbers{}, []any{2.8, int64(1)}, []any{2.8, 1.0}},
		{"day", &Label{}, time.Date(2025, 3, 14, 0, 0, 0, 0, time.UTC), "2025-03-14"},
		{"first day of a month", &Label{}, "2024-02", "2024-02-01"},
		{"last day of a month", &LastDay{}, "2024-02", "2024-02-29"},
		{"last day of a year", &LastDay{}, "2028", "2028-12-31"},
		{"position", &Position{}, "-391, 216, 277 mm", []any{-0.391, 0.216, 0.277}},
		{"box", &Box{}, []any{"0, 0, 0 mm", "1, 2, 3 m"}, []any{[]any{0.0, 0.0, 0.0}, []any{1.0, 2.0, 3.0}}},
		{"thread", &Thread{}, "M10x1.50", map[string]any{"system": "metric", "major": 0.01, "pitch": 0.0015, "text": "M10x1.5"}},
		{"dash size", &Size{}, "-8", "-8"},
		{"size in millimetres", &Size{}, "38 mm", "38 mm"},
		{"size that is a thread", &Size{}, "1/8-27 NPT", "1/8-27 NPT"},
		{"size of a stud", &Size{}, "M8", "M8"},
		{"size of a shell", &Size{}, "size-24", "size-24"},
		{"wire", &Wire{}, "2.5 mm2", 2.5e-6},
		{"one name", &Names{}, "bonnet", []any{"bonnet"}},
		{"names", &Names{}, []any{"bonnet", "fuel.cell"}, []any{"bonnet", "fuel.cell"}},
		{"reference", &Ref{}, "driveline.fuel-in", "driveline.fuel-in"},
		{"choice", &Choice[metalWords]{}, "steel", "steel"},
		{"one of a list of choices", &Choices[fuelWords]{}, "E85", []any{"E85"}},
		{"choices", &Choices[fuelWords]{}, []any{"E85", "petrol"}, []any{"E85", "petrol"}},
		{"life in runs", &Life{}, "120 runs", []any{map[string]any{"dimension": "count", "value": 120.0, "text": "120 runs"}}},
		{"life in hours and years", &Life{}, []any{"40 h", "2 years"}, []any{
			map[string]any{"dimension": "duration", "value": 144e3, "text": "40 h"},
			map[string]any{"dimension": "age", "value": 24.0, "text": "2 years"}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if err := c.leaf.Decode(c.raw); err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(c.want, c.leaf.Document()); diff != "" || c.leaf.Said() != Given || c.leaf.Guessed() {
				t.Errorf("state %v, guessed %v\n%s", c.leaf.Said(), c.leaf.Guessed(), diff)
			}
			for word, state := range map[string]State{"?": Asked, "none": None} {
				if err := c.leaf.Decode(word); err != nil || c.leaf.Said() != state {
					t.Errorf("%q reads as state %v, error %v", word, c.leaf.Said(), err)
				}
			}
		})
	}
}

// TestGuesses marks values with "~", which stands in quotes even where the value
// has none.
func TestGuesses(t *testing.T) {
	for _, c := range []struct {
		name string
		leaf Leaf
		raw  any
		want any
		text string
	}{
		{"quantity", &Mass{}, "~12 kg", 12.0, "12 kg"},
		{"with a blank", &Mass{}, "~ 12 kg", 12.0, "12 kg"},
		{"whole number", &Whole{}, "~2", 2, "2"},
		{"number", &Number{}, "~0.35", 0.35, "0.35"},
		{"flag", &Flag{}, "~true", true, "true"},
		{"choice", &Choice[metalWords]{}, "~steel", "steel", "steel"},
		{"date", &Label{}, "~2023", "2023-01-01", "2023"},
		{"one corner of a box", &Box{}, []any{"~0, 0, 0 mm", "1, 2, 3 m"}, []any{[]any{0.0, 0.0, 0.0}, []any{1.0, 2.0, 3.0}}, "0, 0, 0 mm; 1, 2, 3 m"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if err := c.leaf.Decode(c.raw); err != nil {
				t.Fatal(err)
			}
			if text, _ := c.leaf.Written(); !c.leaf.Guessed() || text != c.text {
				t.Errorf("guessed is %v, text %q", c.leaf.Guessed(), text)
			}
			if diff := cmp.Diff(c.want, c.leaf.Document()); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// TestStates reads the four states of a value, of a table and of a collection.
func TestStates(t *testing.T) {
	o, problems := loadAll(map[string]string{"car.toml": carHead + `
[weighing]
front-left  = "258 kg"
front-right = "?"
rear-left   = "none"
[safety]
seat              = { standard = "8855-1999" }
window-net        = "?"
hand-extinguisher = "none"
[lines.x]
[fuel]
cell.ports = "none"
pump.ports = "?"
filter.ports.in = "?"
`})
	if problems != "" {
		t.Fatal(problems)
	}
	car := o.Load("car.toml").Car
	for _, c := range []struct {
		name      string
		got, want State
	}{
		{"value given", car.Weighing.FrontLeft.State, Given},
		{"value asked", car.Weighing.FrontRight.State, Asked},
		{"value none", car.Weighing.RearLeft.State, None},
		{"value left out", car.Weighing.RearRight.State, Unsaid},
		{"table given", car.Safety.Seat.State, Given},
		{"table asked", car.Safety.WindowNet.State, Asked},
		{"table none", car.Safety.Hand.State, None},
		{"table left out", car.Safety.Helmet.State, Unsaid},
		{"empty table", car.Lines.Named["x"].State, Given},
		{"collection given", car.Lines.State, Given},
		{"collection none", car.Fuel.Cell.Ports.State, None},
		{"collection asked", car.Fuel.Pump.Ports.State, Asked},
		{"collection left out", car.Circuits.State, Unsaid},
		{"one of a collection asked", car.Fuel.Filter.Ports.Named["in"].State, Asked},
	} {
		if c.got != c.want {
			t.Errorf("%s: state %v, want %v", c.name, c.got, c.want)
		}
	}
	if got := car.Fuel.Filter.Ports.Named["in"].Path; got != "fuel.filter.ports.in" {
		t.Errorf("path %q", got)
	}
	if got := car.Safety.Helmet.Path; got != "safety.helmet" {
		t.Errorf("path of a table that is left out %q", got)
	}
}

// TestNotes holds values that hide a choice: they load, as asked.
func TestNotes(t *testing.T) {
	for _, c := range []struct{ name, file, text, want string }{
		{"horsepower", "driveline.toml", "[engine]\npower-crank = \"360 hp at 6000 rpm\"", "4:20 hp hides a choice; write kW, PS (735.5 W) or hp imperial (745.7 W)"},
		{"gallon", "car.toml", "[fuel.cell]\nholds = \"~12 gallons\"", "4:14 gallons hides a choice; write L, US gal (3.785 L) or imp gal (4.546 L)"},
		{"gallons in a list", "car.toml", "[fuel.pump]\nflow = [\"1 gpm at 3 bar\"]", "4:12 gpm hides a choice; write L/min, US gal/min or imp gal/min"},
		{"pipe thread", "car.toml", "[sensors.x]\nthread = \"1/8 BSP\"", "4:11 1/8 BSP hides a choice; write G and the size if it is parallel, R and the size if it tapers"},
		{"stand without basis", "shop.toml", "[stands.tall]\nrated = \"1500 kg\"", `4:9 a rating of 1500 kg that does not say for what; basis = "each" or "pair", as its label says`},
		{"stand with a basis asked", "shop.toml", "[stands.tall]\nrated = \"1500 kg\"\nbasis = \"?\"", `4:9 a rating of 1500 kg that does not say for what; basis = "each" or "pair", as its label says`},
		{"sling without basis", "shop.toml", "[slings.chain]\nrated = \"500 kg\"", `4:9 a rating of 500 kg that does not say for what; basis = "leg" or "whole", as its label says`},
		{"stand with a basis", "shop.toml", "[stands.tall]\nrated = \"1500 kg\"\nbasis = \"pair\"", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			head := map[string]string{"car.toml": carHead, "driveline.toml": lineHead, "shop.toml": shopHead}[c.file]
			o, problems := loadAll(map[string]string{c.file: head + c.text})
			if problems != "" {
				t.Fatal(problems)
			}
			f := o.Load(c.file)
			got := ""
			asked := 0
			for _, n := range f.Notes {
				at := f.Place(n.Span)
				got += fmt.Sprintf("%d:%d %s; %s", at.Line, at.Column, n.Message, n.Want)
				f.Walk(func(path string, _ Field, value any) {
					if leaf, ok := value.(Leaf); ok && path == n.Path && leaf.Said() == Asked && !leaf.Guessed() {
						asked++
					}
				})
			}
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Error(diff)
			}
			if asked != len(f.Notes) {
				t.Errorf("%d of %d noted values are asked", asked, len(f.Notes))
			}
		})
	}
}
