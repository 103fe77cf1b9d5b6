package policies

import (
	"io"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
)

// bundleRoots are the paths under data that a bundle owns: all that fitup.rego
// reads, and itself.
var bundleRoots = []string{"fitup", "lib", registryRoot, rulesRoot, tablesRoot}

// WriteBundle writes what the engine holds as an OPA bundle (a gzipped tar): the
// rules and what they share, the tables, the limits as they were set, and the
// registry, so that stock OPA answers data.fitup as Evaluate does. Its revision
// is the Digest, and two engines with one digest write the same bytes: the
// archive holds no time and no mode of any file.
func (e *Engine) WriteBundle(w io.Writer) error {
	if err := e.prepared(); err != nil {
		return err
	}
	roots := slices.Clone(bundleRoots)
	b := bundle.Bundle{
		Manifest: bundle.Manifest{Revision: e.digest, Roots: &roots},
		Data:     e.reads,
	}
	b.Manifest.SetRegoVersion(ast.RegoV1)
	for _, m := range e.modules {
		b.Modules = append(b.Modules, bundle.ModuleFile{Path: m.bundled(), Raw: m.text})
	}
	slices.SortFunc(b.Modules, func(x, y bundle.ModuleFile) int { return strings.Compare(x.Path, y.Path) })
	return bundle.Write(w, b)
}

// bundled is the path of a module in a bundle: the workshop's own rules lie where
// their package says, wherever they were read.
func (m module) bundled() string {
	if m.entry == nil {
		return m.file
	}
	return path.Join(rulesRoot, m.entry.area, m.entry.name+".rego")
}
