package outfit

import (
	"io/fs"
	"path"
	"strings"

	"github.com/BurntSushi/toml"
)

// A fault is an edit that makes rules find something, one of testdata/faults. Find
// stands once in the table whose header is In, or on the line that begins with In,
// or in the whole file.
type fault struct {
	File, In, Find, Put string
	Given               []map[string]string // edits that have to come first
}

// readFaults reads the faults that one edit alone makes, in the order written.
func readFaults(repository fs.FS) ([]fault, error) {
	names, err := fs.Glob(repository, "testdata/faults/*.toml")
	if err != nil {
		return nil, err
	}
	var all []fault
	for _, name := range names {
		if path.Base(name) == "partial.toml" { // of another form
			continue
		}
		var in map[string]fault
		read, err := toml.DecodeFS(repository, name, &in)
		if err != nil {
			return nil, err
		}
		for _, key := range read.Keys() {
			if f := in[key[0]]; len(key) == 1 && len(f.Given) == 0 {
				all = append(all, f)
			}
		}
	}
	return all, nil
}

// seed makes the edit in the text of the fault's file. A text that was edited there
// before stays as it is.
func (f fault) seed(spec string) string {
	start, end := 0, len(spec)
	if f.In != "" {
		start = strings.Index("\n"+spec, "\n"+f.In)
		if start < 0 {
			return spec
		}
		stop := "\n"
		if strings.HasPrefix(f.In, "[") {
			stop = "\n["
		}
		if i := strings.Index(spec[start+len(f.In):], stop); i >= 0 {
			end = start + len(f.In) + i
		}
	}
	if strings.Count(spec[start:end], f.Find) != 1 {
		return spec
	}
	return spec[:start] + strings.Replace(spec[start:end], f.Find, f.Put, 1) + spec[end:]
}
