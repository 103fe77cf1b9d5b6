package tables_test

import (
	"bytes"
	"fmt"
	"maps"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"

	"fitup/policies/tables"
	"fitup/spec/unit"
)

// A witness is one table entered a second time, from the source and in its own
// units, by somebody who had not seen the first entry.
type witness struct {
	Blocks  []block            `yaml:"blocks"`
	Factors map[string]float64 `yaml:"factors"`
}

// A block is a part of one table as its source prints it: a line a row, and
// either named columns or one column whose cells lie across the values (heads)
// of another.
type block struct {
	Where     map[string]any    `yaml:"where"` // what all its rows have
	Source    string            `yaml:"source"`
	Clause    string            `yaml:"clause"`
	Row       string            `yaml:"row"` // the column that tells the lines apart
	RowUnit   string            `yaml:"row-unit"`
	Columns   []string          `yaml:"columns"`
	Across    string            `yaml:"across"`
	Heads     []string          `yaml:"heads"`
	Cell      string            `yaml:"cell"`
	Unit      string            `yaml:"unit"`
	Units     []string          `yaml:"units"` // one a column, where they differ
	Words     map[string]string `yaml:"words"` // the table's word for the source's
	Tolerance string            `yaml:"tolerance"`
	Figures   map[string][]any  `yaml:"figures"`
}

// exactly is what two entries of one figure may differ by: the table keeps SI
// values to five or six digits.
const exactly = 1e-4

// prose are the columns that hold no figure.
var prose = []string{
	"set", "source", "clause", "confidence", "written", "note", "uses", "label", "counted_from", "family", "group", "base", "number",
	"tensile_confidence", "pressure_confidence", "temperature_confidence", "confidence_inverted", "confidence_45",
}

// awgArea is the conductor area of ASTM B258 in m², from the gauge number.
func awgArea(row map[string]any) (float64, bool) {
	gauge, ok := row["awg"].(string)
	if !ok {
		return 0, false
	}
	n, err := strconv.ParseFloat(gauge, 64)
	if noughts, found := strings.CutSuffix(gauge, "/0"); found {
		n, err = strconv.ParseFloat(noughts, 64)
		n = 1 - n
	}
	d := 0.127e-3 * math.Pow(92, (36-n)/39)
	return math.Pi / 4 * d * d, err == nil
}

// TestWitness compares every figure of every table with a second entry or with
// the formula that its source gives; those that have neither must be listed.
func TestWitness(t *testing.T) {
	folder := filepath.Join("..", "..", "testdata", "published", "tables")
	files, err := filepath.Glob(filepath.Join(folder, "*.yaml"))
	if err != nil || len(files) == 0 {
		t.Fatal("no second entries in ", folder)
	}
	second := map[string]bool{} // TABLE: ROW: COLUMN of each figure that has a second witness
	names := map[string][]string{}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		d := yaml.NewDecoder(bytes.NewReader(text))
		d.KnownFields(true)
		var w witness
		if err := d.Decode(&w); err != nil {
			t.Fatalf("%s: %v", file, err)
		}
		name := strings.TrimSuffix(filepath.Base(file), ".yaml")
		table, ok := tables.Data()[name].(map[string]any)
		if !ok {
			t.Errorf("%s: there is no such table", name)
			continue
		}
		for _, b := range w.Blocks {
			if _, ok := tables.Source(b.Source); !ok {
				t.Errorf("%s: source %q is not in sources/data.yaml", name, b.Source)
			}
			names[name] = append(names[name], b.Row)
			if b.Across != "" {
				names[name] = append(names[name], b.Across)
			}
			names[name] = append(names[name], slices.Collect(maps.Keys(b.Where))...)
			for _, cell := range b.compare(t, name, table["rows"].([]any)) {
				second[cell] = true
			}
		}
		for factor, want := range w.Factors {
			factors, _ := table["factors"].(map[string]any)
			if got := factors[factor]; got != want {
				t.Errorf("%s: factor %s is %v; second entry: %v", name, factor, got, want)
			}
		}
	}
	var alone []string
	for _, name := range tables.Names() {
		if name == "sources" || unsourced[name] != "" {
			continue
		}
		for i, r := range tables.Data()[name].(map[string]any)["rows"].([]any) {
			row := r.(map[string]any)
			if got, ok := row["area"].(float64); ok && !second[at(name, i, "area")] {
				if want, ok := awgArea(row); ok {
					second[at(name, i, "area")] = true
					if math.Abs(got-want) > 1e-3*want {
						t.Errorf("%s: area of %v AWG is %v; by formula: %.4g", name, row["awg"], got, want)
					}
				}
			}
			for column := range row {
				if slices.Contains(prose, column) || slices.Contains(names[name], column) || second[at(name, i, column)] {
					continue
				}
				alone = append(alone, title(name, row, names[name])+": "+column)
			}
		}
	}
	t.Logf("%d figures have a second witness, %d have none", len(second), len(alone))
	for _, cell := range alone {
		if !slices.ContainsFunc(unwitnessed, func(u lone) bool { return u.match(cell) }) {
			t.Errorf("%s: neither a second entry nor a formula, and not listed", cell)
		}
	}
	for _, u := range unwitnessed {
		if !slices.ContainsFunc(alone, u.match) {
			t.Errorf("%s %s is listed as having no second witness, but has one", u.table, u.row)
		}
	}
}

// A lone is a group of figures that nobody entered twice.
type lone struct {
	table, row string // the table, and a word of the row's title
	why        string
	read       string // what a rule writes to read them; "" if no rule can
}

func (u lone) match(cell string) bool {
	title, _, _ := strings.Cut(cell, ": ")
	return slices.Contains(strings.Fields(title), u.row) && strings.HasPrefix(title, u.table+" ")
}

var unwitnessed = []lone{
	{"materials", "SBR", notInMatrix, "data.tables.materials"},
	{"materials", "fluorosilicone", notInMatrix, "data.tables.materials"},
	{"materials", "conductive-PTFE", notInMatrix, "data.tables.materials"},
	{"materials", "bronze", notInMatrix, "data.tables.materials"},
	{"materials", "cast-aluminium", notInMatrix, "data.tables.materials"},
	{"materials", "cast-iron", notInMatrix, "data.tables.materials"},
	{"materials", "plated-steel", notInMatrix, "data.tables.materials"},
	{"materials", "titanium", notInMatrix, "data.tables.materials"},
	{"fluid_properties", "oil", "heat of warm oil, from memory: it varies little from oil to oil", "calc.rise"},
	{"metric_threads", "13", "not in ISO 261; says only which pitches may be written, and a thread is judged by the one that is", ""},
	{"safety_dates", "8855-2021", "from memory: the text of the standard was not seen", "calc.days_left"},
}

// unsourced are tables that no source holds and that nobody could enter again
// from one. No rule decides a danger by them.
var unsourced = map[string]string{
	"adaptors": "the forms are of standards, the pairs of sizes from memory",
	"effort":   "planning weights, set by judgement",

	// A swap advises by them, whatever the level of the rule that sees what they cost.
	"fitting_bore": "drills of standard ends, from memory",
}

const notInMatrix = "the general matrix of materials has no such line"

// TestDangerIsWitnessed: no danger is decided by a figure that has one witness
// only.
func TestDangerIsWitnessed(t *testing.T) {
	dangers := 0
	err := filepath.WalkDir("..", func(name string, _ os.DirEntry, err error) error {
		if err != nil || filepath.Ext(name) != ".rego" || strings.HasSuffix(name, "_test.rego") {
			return err
		}
		text, err := os.ReadFile(name)
		if err != nil {
			return err
		}
		shared := strings.Contains(filepath.ToSlash(name), "/lib/") // may serve a danger
		if !shared && !strings.Contains(string(text), "level: danger") {
			return nil
		}
		dangers++
		for _, u := range unwitnessed {
			if u.read != "" && strings.Contains(string(text), u.read) {
				t.Errorf("%s reads %s, and %s %s has no second witness: %s", name, u.read, u.table, u.row, u.why)
			}
		}
		for table, why := range unsourced {
			if strings.Contains(string(text), "data.tables."+table) {
				t.Errorf("%s reads data.tables.%s, which has no source: %s", name, table, why)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if dangers == 0 {
		t.Error("no danger rule found")
	}
}

func at(table string, row int, column string) string {
	return table + ":" + strconv.Itoa(row) + ":" + column
}

// title names a row by the columns that tell rows apart.
func title(table string, row map[string]any, names []string) string {
	words := []string{table}
	slices.Sort(names)
	for _, column := range slices.Compact(names) {
		if v, ok := row[column]; ok {
			words = append(words, fmt.Sprint(v))
		}
	}
	return strings.Join(words, " ")
}

// compare reports each figure of b that the table lacks or has otherwise, and
// returns those that it has.
func (b block) compare(t *testing.T, name string, rows []any) (cells []string) {
	t.Helper()
	for _, line := range slices.Sorted(maps.Keys(b.Figures)) {
		columns := b.Columns
		if b.Across != "" {
			columns = b.Heads
		}
		figures := b.Figures[line]
		if len(figures) != len(columns) {
			t.Errorf("%s: %s: %d figures for %d columns", name, line, len(figures), len(columns))
			continue
		}
		for i, figure := range figures {
			if figure == nil {
				continue
			}
			keys := maps.Clone(b.Where)
			if keys == nil {
				keys = map[string]any{}
			}
			keys[b.Row] = strings.TrimSpace(line + " " + b.RowUnit)
			column := columns[i]
			if b.Across != "" {
				keys[b.Across] = column
				column = b.Cell
			}
			measure := b.Unit
			if b.Units != nil {
				measure = b.Units[i]
			}
			row := slices.IndexFunc(rows, func(r any) bool {
				row := r.(map[string]any)
				_, has := row[column]
				for key, want := range keys {
					has = has && row[key] != nil && b.same(row[key], want, "", exactly)
				}
				return has
			})
			if row < 0 {
				t.Errorf("%s: no %s for %v", name, column, keys)
				continue
			}
			got := rows[row].(map[string]any)[column]
			if !b.same(got, figure, measure, b.within(t)) {
				t.Errorf("%s: %s for %v is %v; second entry, from %s %s: %v %s", name, column, keys, got, b.Source, b.Clause, figure, measure)
			}
			cells = append(cells, at(name, row, column))
		}
	}
	return cells
}

// within is the relative tolerance of a block.
func (b block) within(t *testing.T) float64 {
	if b.Tolerance == "" {
		return exactly
	}
	q, err := unit.Parse(b.Tolerance, unit.Ratio)
	if err != nil {
		t.Fatal(err)
	}
	return q.SI
}

// same compares a table's figure with one as its source writes it. A list must
// hold all that the table's does, and begin as it does.
func (b block) same(got, want any, measure string, within float64) bool {
	if list, ok := got.([]any); ok {
		all, ok := want.([]any)
		return ok && b.same(list[0], all[0], measure, within) &&
			!slices.ContainsFunc(list, func(item any) bool {
				return !slices.ContainsFunc(all, func(other any) bool { return b.same(item, other, measure, within) })
			})
	}
	text := fmt.Sprint(want)
	if word, ok := b.Words[text]; ok {
		text = word
	}
	number, ok := got.(float64)
	if !ok || measure == "" && text == fmt.Sprint(number) {
		return fmt.Sprint(got) == text
	}
	value, rest, _ := strings.Cut(text, " ")
	if rest != "" && measure == "" {
		measure = rest
	}
	si, _, err := unit.Convert(value, measure)
	if measure == "" {
		n, bad := strconv.ParseFloat(value, 64)
		return bad == nil && math.Abs(number-n) <= within*math.Abs(n)
	}
	if err != nil {
		return false
	}
	f, _ := si.Float64()
	return math.Abs(number-f) <= within*math.Abs(f)
}
