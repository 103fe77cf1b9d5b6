package tables_test

import (
	"fmt"
	"io/fs"
	"math"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"fitup/policies/tables"
	"fitup/spec/unit"
)

var confidences = []string{"published", "practice", "memory"}

// TestShape: every table says what it is and where each of its figures is from,
// in the words that sources/data.yaml and this package know.
func TestShape(t *testing.T) {
	for name, content := range tables.Data() {
		if name == "sources" {
			continue
		}
		file := content.(map[string]any)
		for key := range file {
			if !slices.Contains([]string{"about", "source", "clause", "confidence", "sets", "factors", "rows"}, key) {
				t.Errorf("%s: unknown key %q", name, key)
			}
		}
		if about, _ := file["about"].(string); about == "" {
			t.Errorf("%s: no about", name)
		}
		basis(t, name, file, true)
		sets, _ := file["sets"].(map[string]any)
		used := map[string]bool{}
		rows, _ := file["rows"].([]any)
		if len(rows) == 0 {
			t.Errorf("%s: no rows", name)
		}
		for i, r := range rows {
			row := r.(map[string]any)
			basis(t, name, row, false)
			if set, ok := row["set"].(string); ok {
				used[set] = true
				if _, ok := sets[set]; !ok {
					t.Errorf("%s: row %d: no set %q", name, i+1, set)
				}
			}
		}
		for set, s := range sets {
			basis(t, name+": "+set, s.(map[string]any), false)
			if !used[set] {
				t.Errorf("%s: set %q has no rows", name, set)
			}
		}
	}
}

// basis checks what of holds under source, clause and confidence.
func basis(t *testing.T, name string, of map[string]any, must bool) {
	t.Helper()
	var keys []any
	switch source := of["source"].(type) {
	case nil:
	case []any:
		keys = source
	default:
		keys = []any{source}
	}
	if must && len(keys) == 0 {
		t.Errorf("%s: no source", name)
	}
	for _, key := range keys {
		if _, ok := tables.Source(key.(string)); !ok {
			t.Errorf("%s: source %q is not in sources/data.yaml", name, key)
		}
		if key == "from-memory" && of["confidence"] != "memory" {
			t.Errorf("%s: from memory, with confidence %v: %v", name, of["confidence"], of)
		}
	}
	if c, ok := of["confidence"].(string); ok && !slices.Contains(confidences, c) || must && !ok {
		t.Errorf("%s: confidence %q, want one of %v", name, c, confidences)
	}
}

func TestSources(t *testing.T) {
	kinds := []string{"standard", "regulation", "manual", "textbook", "library", "practice", "memory"}
	for _, key := range tables.SourceKeys() {
		s, ok := tables.Source(key)
		if !ok || s.Title == "" || !slices.Contains(kinds, s.Kind) {
			t.Errorf("%s: %+v", key, s)
		}
		if s.Seen != "" && !strings.HasPrefix(s.Seen, "https://") {
			t.Errorf("%s: seen at %q", key, s.Seen)
		}
	}
	if _, ok := tables.Source("hearsay"); ok {
		t.Error("a source that is not there was found")
	}

	// One key a line in alphabetical order, so that two people adding a source
	// seldom touch the same lines.
	text, err := fs.ReadFile(tables.FS(), "sources/data.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var keys []string
	for line := range strings.Lines(string(text)) {
		if key, _, ok := strings.Cut(line, ":"); ok && !strings.HasPrefix(line, "#") && !strings.HasPrefix(line, " ") {
			keys = append(keys, key)
		}
	}
	if !slices.IsSorted(keys) {
		t.Errorf("sources are out of order: %s", cmp.Diff(slices.Sorted(slices.Values(keys)), keys))
	}
}

func TestDataIsFresh(t *testing.T) {
	first := tables.Data()
	first["dash"].(map[string]any)["rows"].([]any)[0].(map[string]any)["dash"] = "spoilt"
	if got := tables.Data()["dash"].(map[string]any)["rows"].([]any)[0].(map[string]any)["dash"]; got != float64(2) {
		t.Errorf("a caller's change reached the table: %v", got)
	}
	if diff := cmp.Diff(tables.Names(), slices.Sorted(func(yield func(string) bool) {
		for name := range tables.Data() {
			if !yield(name) {
				return
			}
		}
	})); diff != "" {
		t.Error(diff)
	}
}

var writtenForm = regexp.MustCompile(`^([\d./-]+)(?: to ([\d./-]+))? ([^ ].*)$`)

// TestWritten: a figure in SI is the source's own, converted exactly. Only
// figures with one value or one band are read here; a longer note names several.
func TestWritten(t *testing.T) {
	single := map[string]string{
		"hose_bore": "bore", "fitting_bore": "bore", "spanners": "across_flats", "fuels": "heating_value", "wire_resistance": "resistance", "hose_kinds": "pressure",
	}
	dimensions := map[string]unit.Dimension{
		"hose_bore": unit.Length, "fitting_bore": unit.Length, "spanners": unit.Length, "flare_torque": unit.Torque, "fuels": unit.SpecificEnergy,
		"fuel_consumption": unit.FuelConsumption, "velocity": unit.Speed, "wire_resistance": unit.ResistancePerLength, "hose_kinds": unit.Pressure,
	}
	for name, d := range dimensions {
		checked := 0
		for _, r := range tables.Data()[name].(map[string]any)["rows"].([]any) {
			row := r.(map[string]any)
			text, ok := row["written"].(string)
			if !ok {
				continue
			}
			m := writtenForm.FindStringSubmatch(text)
			if m == nil {
				t.Errorf("%s: %q is not a figure", name, text)
				continue
			}
			want := map[string]string{"low": m[1], "high": m[2]}
			if m[2] == "" {
				want = map[string]string{single[name]: m[1]}
			}
			for column, figure := range want {
				q, err := unit.Parse(figure+" "+m[3], d)
				if err != nil {
					t.Errorf("%s: %q: %v", name, text, err)
				} else if row[column] != q.SI {
					t.Errorf("%s: %s is %v, %q is %v", name, column, row[column], text, q.SI)
				}
				checked++
			}
		}
		if checked == 0 {
			t.Errorf("%s: nothing is written", name)
		}
	}
}

func TestDash(t *testing.T) {
	for _, size := range tables.DashSizes() {
		row, ok := tables.FlareThread(size)
		if !ok || row.Source == "" || row.Confidence == "" {
			t.Fatalf("-%d: %+v", size, row)
		}
		if row.TubeOD != unit.Dash(size).TubeOD() {
			t.Errorf("-%d: tube of %v m", size, row.TubeOD)
		}
		a, err := unit.ParseThread(row.Flare37)
		if err != nil {
			t.Fatal(err)
		}
		if row.Flare45 == "" {
			continue
		}
		b, err := unit.ParseThread(row.Flare45)
		if err != nil {
			t.Fatal(err)
		}
		if a.Equal(b) != row.SameThread {
			t.Errorf("-%d: %s and %s, same_thread %v", size, a, b, row.SameThread)
		}
	}
	// Two pages list -2, -3, -4, -5, -8 and -10 as the sizes that coincide.
	var same []int
	for _, size := range tables.DashSizes() {
		if row, _ := tables.FlareThread(size); row.SameThread {
			same = append(same, size)
		}
	}
	if diff := cmp.Diff([]int{2, 3, 4, 5, 8, 10}, same); diff != "" {
		t.Error(diff)
	}
}

func TestHose(t *testing.T) {
	for _, size := range tables.DashSizes() {
		bend, ok := tables.HoseBend(size)
		if !ok {
			continue
		}
		// Both columns come from FAA AC 43.13-1B table 9-3, entered apart.
		bore, ok := tables.HoseBore("tube-equivalent", size)
		if !ok || bore.Bore != bend.Bore {
			t.Errorf("-%d: bore %v, in the bend table %v", size, bore.Bore, bend.Bore)
		}
		// The burst figure is about four times the operating one, but for -5 and
		// -12, where the table gives 3.3 and 3.4.
		if ratio := bend.Burst / bend.Operating; ratio < 3.3 || ratio > 4.6 {
			t.Errorf("-%d: burst is %.2f times operating", size, ratio)
		}
		full, ok := tables.HoseBore("full-bore", size)
		if !ok || full.Bore != unit.Dash(size).TubeOD() {
			t.Errorf("-%d: full bore %v", size, full.Bore)
		}
	}
	three, ok := tables.HoseBore("tube-equivalent", 3)
	if !ok || three.Bore != 0.003175 || three.Confidence != "memory" {
		t.Errorf("-3: %+v", three)
	}
	for kind, injection := range map[string]bool{"J30R6": false, "J30R7": false, "J30R9": true, "J30R14": false} {
		if k, ok := tables.HoseKind(kind); !ok || k.Injection == nil || *k.Injection != injection {
			t.Errorf("%s: %+v", kind, k)
		}
	}
	if k, ok := tables.HoseKind("J30R10"); !ok || k.InTank == nil || !*k.InTank {
		t.Errorf("J30R10: %+v", k)
	}
	if v, ok := tables.Velocity("handbook", "suction"); !ok || v.High != 4*0.3048 {
		t.Errorf("suction: %+v", v)
	}
}

// TestFittingBore: a flare is drilled narrower than the tube that it takes and than
// the next size, and a boss stud as the flare of its size.
func TestFittingBore(t *testing.T) {
	last := 0.0
	for _, size := range tables.DashSizes() {
		flare, ok := tables.FittingBore("37-flare", unit.Dash(size).String())
		if !ok {
			continue
		}
		if flare.Bore <= last || flare.Bore >= unit.Dash(size).TubeOD() || flare.Confidence != "memory" {
			t.Errorf("-%d: %+v", size, flare)
		}
		last = flare.Bore
		if boss, ok := tables.FittingBore("O-ring-boss", unit.Dash(size).String()); ok && boss.Bore != flare.Bore {
			t.Errorf("-%d: boss %v, flare %v", size, boss.Bore, flare.Bore)
		}
	}
	if last == 0 {
		t.Error("no flare has a bore")
	}
}

// TestFlareTorque: N m printed beside the in-lb figures in the sources, to the
// digits printed.
func TestFlareTorque(t *testing.T) {
	for _, c := range []struct {
		makeUp    string
		dash      int
		low, high float64
	}{
		{"machined-swivel", 4, 11.3, 15.8},
		{"machined-swivel", 6, 16.9, 22.0},
		{"machined-swivel", 8, 30.5, 39.5},
		{"machined-swivel", 10, 40.7, 48.6},
		{"steel-swivel", 8, 48.6, 53.1},
		{"steel-swivel", 12, 96.6, 106.8},
		{"aluminium-coupling-nut", 8, 26.0, 29.4},
		{"steel-industrial", 16, 160, 176},
	} {
		got, ok := tables.FlareTorque(c.makeUp, c.dash)
		if !ok || math.Abs(got.Low-c.low) > 0.051 || math.Abs(got.High-c.high) > 0.051 {
			t.Errorf("%s -%d: %v to %v, want %v to %v", c.makeUp, c.dash, got.Low, got.High, c.low, c.high)
		}
	}
	// Bands are the right way round, and rise with size within a make-up.
	for makeUp := range tables.FlareMakeUps() {
		last := 0.0
		for _, size := range tables.DashSizes() {
			if b, ok := tables.FlareTorque(makeUp, size); ok {
				if b.Low >= b.High || b.High < last {
					t.Errorf("%s -%d: %v to %v after %v", makeUp, size, b.Low, b.High, last)
				}
				last = b.High
			}
		}
	}
}

// TestBoltStrength: proof loads of ISO 898-1 tables for coarse threads, N,
// against proof stress times the stress area printed beside them. The standard
// rounds unevenly, by up to 0.6 %.
func TestBoltStrength(t *testing.T) {
	for _, c := range []struct {
		diameter, area float64 // mm, mm²
		loads          map[string]float64
	}{
		{5, 14.2, map[string]float64{"4.6": 3200, "4.8": 4400, "5.8": 5400, "6.8": 6250, "8.8": 8230, "9.8": 9230, "10.9": 11800, "12.9": 13800}},
		{8, 36.6, map[string]float64{"4.6": 8240, "4.8": 11400, "5.8": 13900, "6.8": 16100, "8.8": 21200, "9.8": 23800, "10.9": 30400, "12.9": 35500}},
		{12, 84.3, map[string]float64{"4.6": 19000, "4.8": 26100, "5.8": 32000, "6.8": 37100, "8.8": 48900, "9.8": 54800, "10.9": 70000, "12.9": 81800}},
		{16, 157, map[string]float64{"4.6": 35300, "4.8": 48700, "5.8": 59700, "6.8": 69100, "8.8": 91000, "9.8": 102000, "10.9": 130000, "12.9": 152000}},
	} {
		for class, load := range c.loads {
			s, ok := tables.BoltStrength(class, c.diameter/1000)
			if got := s.Proof * c.area * 1e-6; !ok || math.Abs(got/load-1) > 0.006 {
				t.Errorf("M%v %s: proof load %.0f N, want %v", c.diameter, class, got, load)
			}
		}
	}
	// ISO 898-1: 8.8 changes above 16 mm, and 9.8 ends there.
	if s, _ := tables.BoltStrength("8.8", 0.020); s.Proof != 600e6 {
		t.Errorf("M20 8.8: %v", s.Proof)
	}
	if _, ok := tables.BoltStrength("9.8", 0.020); ok {
		t.Error("M20 9.8 was found")
	}
	// SAE J429: 7/16-20 grade 8, 0.1187 in², 63.4 and 79.2 kN.
	s, ok := tables.BoltStrength("grade-8", 0.4375*0.0254)
	area := 0.1187 * 0.0254 * 0.0254
	if !ok || math.Abs(s.Proof*area-63.4e3) > 60 || math.Abs(s.Tensile*area-79.2e3) > 60 {
		t.Errorf("7/16-20 grade 8: %v, %v N", s.Proof*area, s.Tensile*area)
	}
	if s, _ := tables.BoltStrength("grade-5", 0.0381); s.Written != "74 ksi proof, 81 ksi yield, 105 ksi tensile" {
		t.Errorf("1-1/2 grade 5: %+v", s)
	}
}

func TestFasteners(t *testing.T) {
	torque := func(set, thread, class string) float64 {
		rows := tables.BoltTorques(set, thread, class)
		if len(rows) != 1 {
			t.Errorf("%s %s %s: %d rows", set, thread, class, len(rows))
			return 0
		}
		return rows[0].Torque
	}
	// Cast aluminium takes about four fifths of what steel does.
	for thread, class := range map[string]string{"M8x1.25": "8.8", "M10x1.5": "8.8", "M12x1.75": "10.9"} {
		share := torque("cast-aluminium", thread, class) / torque("steel-0.14", thread, class)
		if share < 0.7 || share > 0.83 {
			t.Errorf("%s %s in cast aluminium takes %.2f of its torque in steel", thread, class, share)
		}
	}
	// VDI 2230: at a friction of 0.12 the torque is 0.155 to 0.162 of preload
	// times diameter.
	for thread, d := range map[string]float64{"M8x1": 0.008, "M10x1.25": 0.010, "M12x1.25": 0.012, "M14x1.5": 0.014, "M16x1.5": 0.016} {
		for _, class := range []string{"8.8", "10.9", "12.9"} {
			for _, r := range tables.BoltTorques("vdi-2230-fine", thread, class) {
				if k := r.Torque / (r.Preload * d); r.Friction == 0.12 && (k < 0.154 || k > 0.163) {
					t.Errorf("%s %s: torque is %.3f of preload times diameter", thread, class, k)
				}
			}
		}
	}
	for _, c := range []struct {
		set, material, class string
		want                 float64
		confidence           string
	}{
		{"class", "steel", "8.8", 1.2, "published"},
		{"class", "steel-over-800", "10.9", 1.0, "published"},
		{"class", "cast-aluminium", "5.8", 2.2, "published"},
		{"class", "cast-aluminium", "8.8", 2.0, "practice"},
		{"thumb", "aluminium", "", 2, "practice"},
		{"insert", "insert", "", 1.5, "published"},
		{"eye-bolt", "aluminium", "", 2, "published"},
	} {
		got, ok := tables.Engagement(c.set, c.material, c.class)
		if !ok || got.Diameters != c.want || got.Confidence != c.confidence {
			t.Errorf("%s %s %s: %+v", c.set, c.material, c.class, got)
		}
	}
	// No rule: to be calculated, not to be guessed.
	if r, ok := tables.Engagement("class", "pure-aluminium", "8.8"); ok {
		t.Errorf("8.8 in pure aluminium: %+v", r)
	}
	if fine, dynamic := tables.EngagementFactors(); fine != 1.25 || dynamic != 1.2 {
		t.Errorf("factors %v, %v", fine, dynamic)
	}
	for _, c := range []struct {
		head, size string
		mm         float64
	}{
		{"iso-hex", "M10", 16}, {"din-hex", "M10", 17}, {"jis-small-hex", "M10", 14}, {"socket-key", "M10", 8}, {"inch-hex", "3/8", 14.2875}, {"flare-nut", "-8", 22.225},
	} {
		if got, ok := tables.AcrossFlats(c.head, c.size); !ok || math.Abs(got.AcrossFlats*1000-c.mm) > 1e-9 {
			t.Errorf("%s %s: %+v", c.head, c.size, got)
		}
	}
}

// TestFuels: heating values in MJ/kg and air-fuel ratios as the US Department of
// Energy's table gives them, and E85 by its published mixture.
func TestFuels(t *testing.T) {
	for _, c := range []struct {
		fuel        string
		mj, airFuel float64
	}{
		{"petrol", 43.44, 14.7}, {"ethanol", 26.95, 9.0}, {"methanol", 20.09, 6.47}, {"diesel", 42.78, 14.5}, {"E85", 29.3, 9.8},
	} {
		got, ok := tables.Fuel(c.fuel)
		if !ok || math.Abs(got.HeatingValue/1e6-c.mj) > 0.051 || got.AirFuel != c.airFuel {
			t.Errorf("%s: %+v", c.fuel, got)
		}
	}
	// E10 lies between petrol and ethanol, a tenth of the way by volume.
	e10, _ := tables.Fuel("E10")
	if e10.HeatingValue < 41.5e6 || e10.HeatingValue > 41.9e6 || e10.Density < 748 || e10.Density > 751 {
		t.Errorf("E10: %+v", e10)
	}
	// 0.45 lb/(hp h) is 274 g/kWh.
	if got, ok := tables.FuelConsumption("petrol", "natural"); !ok || math.Abs(got.Low*3.6e9-274) > 0.5 || math.Abs(got.High*3.6e9-304) > 0.5 {
		t.Errorf("petrol: %+v", got)
	}
	if got, ok := tables.FuelConsumption("E85", "boosted"); !ok || got.Confidence != "practice" {
		t.Errorf("E85: %+v", got)
	}
}

func TestFluids(t *testing.T) {
	groups := map[string]bool{}
	for _, name := range tables.FluidNames() {
		f, ok := tables.Fluid(name)
		if !ok || f.Family == "" {
			t.Errorf("%s: %+v", name, f)
		}
		groups[f.Group] = true
		if r, ok := tables.Compatibility("PTFE", name); !ok || r.Verdict != "good" {
			t.Errorf("PTFE in %s: %+v", name, r)
		}
	}
	seen := map[string]bool{}
	for _, r := range tables.Data()["materials"].(map[string]any)["rows"].([]any) {
		row := r.(map[string]any)
		pair := fmt.Sprint(row["material"], " in ", row["fluid"])
		if seen[pair] {
			t.Errorf("%s is there twice", pair)
		}
		seen[pair] = true
		if !groups[row["fluid"].(string)] {
			t.Errorf("no fluid is judged as %v", row["fluid"])
		}
		if v := row["verdict"].(string); !slices.Contains([]string{"good", "limited", "unfit"}, v) {
			t.Errorf("%v in %v: verdict %q", row["material"], row["fluid"], v)
		}
	}
	for _, c := range []struct{ material, fluid, verdict, confidence string }{
		{"EPDM", "DOT 4", "good", "published"},
		{"EPDM", "mineral", "unfit", "published"},
		{"EPDM", "petrol", "unfit", "published"},
		{"nitrile", "DOT 3", "unfit", "published"},
		{"aluminium", "methanol", "unfit", "published"},
		{"brass", "diesel", "unfit", "published"},
		{"silicone", "petrol", "unfit", "memory"},
		{"aluminium", "coolant", "good", "memory"},
	} {
		if got, ok := tables.Compatibility(c.material, c.fluid); !ok || got.Verdict != c.verdict || got.Confidence != c.confidence {
			t.Errorf("%s in %s: %+v", c.material, c.fluid, got)
		}
	}
	// 49 CFR 571.116 in °F: DOT 4, 446 dry and 311 wet.
	dot4, _ := tables.Fluid("DOT 4")
	dry, _ := unit.Parse("446 F", unit.Temperature)
	wet, _ := unit.Parse("311 F", unit.Temperature)
	if math.Abs(dot4.DryBoiling-dry.SI) > 0.6 || math.Abs(dot4.WetBoiling-wet.SI) > 0.6 {
		t.Errorf("DOT 4 boils at %v and %v K", dot4.DryBoiling, dot4.WetBoiling)
	}
	// Half and half coolant at 70 °F, 67.05 lb/ft³, is 1074 kg/m³.
	if rows := tables.FluidProperties("coolant"); len(rows) == 0 || math.Abs(rows[0].Density-1074) > 0.5 {
		t.Errorf("coolant: %+v", rows)
	}
	if g, ok := tables.OilGrade("40"); !ok || g.KinematicHigh != 16.3e-6 || g.HighShear != 3.5e-3 {
		t.Errorf("grade 40: %+v", g)
	}
}

func TestWires(t *testing.T) {
	area := func(text string) float64 {
		w, err := unit.ParseWire(text)
		if err != nil {
			t.Fatal(err)
		}
		return w.Area
	}
	kelvin := func(c float64) float64 { return c + 273.15 }
	for _, c := range []struct {
		laid, wire string
		insulation float64 // °C
		want       float64
	}{
		{"free", "18 AWG", 105, 20},
		{"bundle", "18 AWG", 105, 6},
		{"free", "0 AWG", 105, 285},
		{"free", "2.5 mm2", 105, 35}, // as 14 AWG, 2.08 mm²
		{"free", "18 AWG", 100, 20},  // as 90 °C
		{"bundle", "10 AWG", 150, 26},
	} {
		if got, ok := tables.Ampacity(c.laid, area(c.wire), kelvin(c.insulation)); !ok || got.Current != c.want {
			t.Errorf("%s %s at %v °C: %+v, want %v A", c.laid, c.wire, c.insulation, got, c.want)
		}
	}
	if got, ok := tables.Ampacity("free", area("20 AWG"), kelvin(105)); ok {
		t.Errorf("20 AWG is not in the table: %+v", got)
	}
	if got, ok := tables.Ampacity("free", area("18 AWG"), kelvin(50)); ok {
		t.Errorf("no insulation is rated for 50 °C: %+v", got)
	}
	// 33 CFR 183.425 as worked elsewhere: 20 A becomes 17 A.
	if f, ok := tables.HotBayFactor(kelvin(105)); !ok || f.Factor*20 != 17 || f.Confidence != "published" {
		t.Errorf("hot bay: %+v", f)
	}
	// IEC 60228: 2.5 mm² plain, 7.98 ohm/km.
	if r, ok := tables.WireResistance("plain", area("2.5 mm2")); !ok || r.Resistance != 0.00798 {
		t.Errorf("2.5 mm2: %+v", r)
	}
	if r, ok := tables.WireResistance("aircraft", area("16 AWG")); !ok || r.AWG != "16" || math.Abs(r.Resistance*304.8-4.81) > 1e-9 {
		t.Errorf("16 AWG: %+v", r)
	}
}

func TestSafetyDates(t *testing.T) {
	for _, r := range tables.Data()["safety_dates"].(map[string]any)["rows"].([]any) {
		row := r.(map[string]any)
		if until, ok := row["accepted_until"].(string); ok {
			if _, err := unit.ParseDate(until); err != nil {
				t.Errorf("%v: %v", row["standard"], err)
			}
		}
		_, lives := row["life_months"]
		from, counted := row["counted_from"].(string)
		if lives != counted || counted && !slices.Contains([]string{"made", "made-year-end", "check"}, from) {
			t.Errorf("%v: life %v, counted from %q", row["standard"], row["life_months"], from)
		}
	}
	rows := tables.SafetyDates("helmet", "Snell SA2015")
	until := map[string]string{}
	for _, r := range rows {
		until[r.Authority] = r.AcceptedUntil
	}
	if diff := cmp.Diff(map[string]string{"fia": "2023-12-31", "motorsport-uk": "2026-12-31"}, until); diff != "" {
		t.Error(diff)
	}
	if rows := tables.SafetyDates("seat", "FIA 8862-2009"); len(rows) != 1 || rows[0].LifeMonths != 120 || rows[0].Confidence != "published" {
		t.Errorf("8862-2009: %+v", rows)
	}
}
