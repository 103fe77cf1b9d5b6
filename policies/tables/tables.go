// Package tables holds the published figures that rules and workings look up.
// Each is a data.yaml in a folder named after the table, so that stock OPA reads
// it as data.tables.NAME; Go reads the same files through this package.
//
// A file says what it is (about), where it is from (source, a key of the table
// "sources"; clause; confidence) and then its rows; "sources" itself holds one
// citation a key. A row may carry its own source, clause and confidence, which
// then win. Figures are in SI unless a column's name ends in its unit; written
// keeps the source's own. What looks a row up says with its second result whether
// the table has it.
package tables

import (
	"bytes"
	"cmp"
	"embed"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"sync"

	"go.yaml.in/yaml/v3"
)

//go:embed */data.yaml
var files embed.FS

// FS returns the tables as files: NAME/data.yaml.
func FS() fs.FS { return files }

// Names returns the names of all tables, sorted.
func Names() []string { return slices.Sorted(maps.Keys(contents())) }

// Named returns the tables that have one of the names, as maps, slices, strings,
// float64s and booleans. The value is fresh: the caller may change it.
func Named(names []string) map[string]any {
	tables := make(map[string]any, len(names))
	for _, name := range names {
		if content, ok := contents()[name]; ok {
			tables[name] = clone(content())
		}
	}
	return tables
}

// contents has for each table a function that reads it at its first call.
var contents = sync.OnceValue(func() map[string]func() any {
	folders, err := fs.ReadDir(files, ".")
	if err != nil {
		panic(err) // it is embedded
	}
	tables := make(map[string]func() any, len(folders))
	for _, folder := range folders {
		tables[folder.Name()] = sync.OnceValue(func() any {
			var content map[string]any
			name := folder.Name() + "/data.yaml"
			mustDecode(name, &content)
			plain, err := jsonLike(content)
			if err != nil {
				panic(fmt.Errorf("tables: %s: %w", name, err)) // embedded, so a test has read it
			}
			return plain
		})
	}
	return tables
})

func mustDecode(name string, into any) {
	text, err := files.ReadFile(name)
	if err != nil {
		panic(err)
	}
	d := yaml.NewDecoder(bytes.NewReader(text))
	d.KnownFields(true)
	if err := d.Decode(into); err != nil {
		panic(fmt.Errorf("tables: %s: %w", name, err))
	}
}

// jsonLike turns what the YAML decoder gives into what JSON can hold, and
// refuses the rest (a bare date, a key that is not a string).
func jsonLike(v any) (any, error) {
	switch v := v.(type) {
	case map[string]any:
		for key, item := range v {
			plain, err := jsonLike(item)
			if err != nil {
				return nil, fmt.Errorf("%s: %w", key, err)
			}
			v[key] = plain
		}
		return v, nil
	case []any:
		for i, item := range v {
			plain, err := jsonLike(item)
			if err != nil {
				return nil, fmt.Errorf("%d: %w", i, err)
			}
			v[i] = plain
		}
		return v, nil
	case int:
		return float64(v), nil
	case float64, string, bool:
		return v, nil
	}
	return nil, fmt.Errorf("%v is a %T: write text, a number, true or false", v, v)
}

func clone(v any) any {
	switch v := v.(type) {
	case map[string]any:
		c := make(map[string]any, len(v))
		for key, item := range v {
			c[key] = clone(item)
		}
		return c
	case []any:
		c := make([]any, len(v))
		for i, item := range v {
			c[i] = clone(item)
		}
		return c
	}
	return v
}

// A Citation is where a figure is from.
type Citation struct {
	Title   string `yaml:"title"`
	Edition string `yaml:"edition"`
	Kind    string `yaml:"kind"` // standard, regulation, manual, textbook, library, practice or memory
	Seen    string `yaml:"seen"` // where it was read; may be empty
}

var sources = sync.OnceValue(func() map[string]Citation {
	var s map[string]Citation
	mustDecode("sources/data.yaml", &s)
	return s
})

// Source returns the citation that a source key stands for.
func Source(key string) (Citation, bool) {
	s, ok := sources()[key]
	return s, ok
}

// A Row holds the columns that every row may have. In a row returned by this
// package Source, Clause and Confidence are filled in: the row's own, else its
// set's, else the file's.
type Row struct {
	Set        string `yaml:"set"` // which of several tables in one file; may be empty
	Source     string `yaml:"source"`
	Clause     string `yaml:"clause"`
	Confidence string `yaml:"confidence"` // published, practice or memory
	Written    string `yaml:"written"`    // the source's own figure, where the unit differs
	Note       string `yaml:"note"`
}

func (r *Row) row() *Row { return r }

// A Set is one of several tables that share a file.
type Set struct {
	About      string `yaml:"about"`
	Source     string `yaml:"source"`
	Clause     string `yaml:"clause"`
	Confidence string `yaml:"confidence"`
}

// A table is one file of rows of type T.
type table[T any] struct {
	Set     `yaml:",inline"` // of the file as a whole
	Sets    map[string]Set   `yaml:"sets"`
	Factors map[string]float64
	Rows    []T
}

// load returns a function that reads a table at its first call. A column that T
// does not have is an error.
func load[T any, P interface {
	*T
	row() *Row
}](name string) func() *table[T] {
	return sync.OnceValue(func() *table[T] {
		t := new(table[T])
		mustDecode(name+"/data.yaml", t)
		for i := range t.Rows {
			r := P(&t.Rows[i]).row()
			set, ok := t.Sets[r.Set]
			if r.Set != "" && !ok {
				panic(fmt.Errorf("tables: %s: row %d: no set %q", name, i+1, r.Set))
			}
			for _, from := range []Set{set, t.Set} {
				if r.Source == "" {
					r.Source = from.Source
					r.Clause = cmp.Or(r.Clause, from.Clause)
				}
				r.Confidence = cmp.Or(r.Confidence, from.Confidence)
			}
		}
		return t
	})
}

// find returns the first row that satisfies match.
func (t *table[T]) find(match func(T) bool) (T, bool) {
	i := slices.IndexFunc(t.Rows, match)
	if i < 0 {
		var none T
		return none, false
	}
	return t.Rows[i], true
}

// all returns every row that satisfies match, in the order of the file.
func (t *table[T]) all(match func(T) bool) []T {
	var rows []T
	for _, r := range t.Rows {
		if match(r) {
			rows = append(rows, r)
		}
	}
	return rows
}
