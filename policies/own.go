package policies

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"

	"github.com/open-policy-agent/opa/v1/ast"
)

// ownArea is the area of a workshop's own rules: package rules.own.NAME.
const ownArea = "own"

// A Folder holds a workshop's own rules, one NAME.rego each, and may hold their
// limits in data.yaml.
type Folder struct {
	Name string // as the user gave it; begins the file names in messages
	FS   fs.FS
}

// What a workshop's own rules may be. They come from whoever can write to the
// folder, and compiling them cannot be stopped.
const (
	mostOwnRules = 100
	mostRuleSize = 64 << 10 // bytes in a file
)

// ownFS reads the files of a workshop's folder: regular ones, of a size that
// somebody wrote. Opening a named pipe would wait for its writer.
type ownFS struct{ Folder }

func (o ownFS) Open(name string) (fs.File, error) { return o.FS.Open(name) }

func (o ownFS) ReadFile(name string) ([]byte, error) {
	text, err := o.read(name)
	if failed, ok := errors.AsType[*fs.PathError](err); ok {
		err = failed.Err // without the system call
	}
	if err != nil {
		return nil, fmt.Errorf("%s:1: it cannot be read: %w", path.Join(o.Name, name), err)
	}
	return text, nil
}

func (o ownFS) read(name string) ([]byte, error) {
	info, err := fs.Stat(o.FS, name)
	switch {
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, errors.New("this is no regular file")
	}
	f, err := o.FS.Open(name)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, mostRuleSize+1))
	if err == nil && len(text) > mostRuleSize {
		err = fmt.Errorf("it is larger than %d KiB", mostRuleSize>>10)
	}
	return text, err
}

// reach tells what an own rule refers to beyond what it may: the document, the
// tables, the shared library, the built-in limits and itself. A module in
// another package, or one that replaces what other rules read, could disarm them
// in silence.
func reach(module *ast.Module, name string) error {
	var all problems
	self := packageOf(ownArea, name)
	at := func(l *ast.Location) string { return fmt.Sprintf("%s:%d", l.File, l.Row) }
	ast.NewGenericVisitor(func(x any) bool {
		switch x := x.(type) {
		case *ast.Package:
			return true
		case *ast.With:
			if target, ok := x.Target.Value.(ast.Ref); !ok || !target.HasPrefix(ast.InputRootRef) {
				all.add("%s: with %s: an own rule may replace the input only", at(x.Location), x.Target)
				return true
			}
		case *ast.Term:
			if ref, ok := x.Value.(ast.Ref); ok && ref[0].Equal(ast.DefaultRootDocument) && !mayRead(ref, self) {
				all.add("%s: %s: an own rule may read input, data.tables, data.lib, the limits of rules, and itself",
					at(x.Location), ref)
			}
		}
		return false
	}).Walk(module)
	return all.join()
}

func mayRead(ref, self ast.Ref) bool {
	name := func(i int) string {
		if i < len(ref) {
			if s, ok := ref[i].Value.(ast.String); ok {
				return string(s)
			}
		}
		return ""
	}
	switch name(1) {
	case "tables", "lib":
		return true
	case "rules":
		return ref.HasPrefix(self) || name(2) != "" && name(3) == limitsKey
	}
	return false
}
