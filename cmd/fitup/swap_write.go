package main

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"

	"github.com/spf13/cobra"

	"fitup/policies/config"
	"fitup/spec/source"
	"fitup/spec/tree"
)

// drivelineKey is the key of which two cars exchange the values.
const drivelineKey = "car.driveline"

// exchange writes the exchange of two drivelines, and says what it wrote.
func (o swapOptions) exchange(cmd *cobra.Command, m *moving) error {
	return o.exchangeIn(cmd, m.specs.Tree, m.From.Car.Name, m.Into.Car.Name)
}

// exchangeUnplanned is exchange for files in which an error leaves nothing to
// plan by, which it says as well.
func (o swapOptions) exchangeUnplanned(cmd *cobra.Command, wrong config.Problems) error {
	t, from, err := tree.Open(o.from)
	if err == nil {
		from, err = t.Resolve(from)
	}
	if err != nil {
		return callErrorf("%w", err)
	}
	other, into, err := tree.Open(o.into)
	if err == nil {
		into, err = other.Resolve(into)
	}
	switch {
	case err != nil:
		return callErrorf("%w", err)
	case other.Root != t.Root || from == into:
		return callErrorf("%s and %s are not two cars below one root", o.from, o.into)
	}
	if err := o.exchangeIn(cmd, t, from, into); err != nil {
		return err
	}
	return wrong
}

func (o swapOptions) exchangeIn(cmd *cobra.Command, t *tree.Tree, from, into string) error {
	if !o.force {
		if err := committed(t, from, into); err != nil {
			return err
		}
	}
	pair, err := exchangeOf(t, from, into)
	if err != nil {
		return callErrorf("%w", err)
	}
	if err := files.pass(func() error { return pair.write(os.Rename) }); err != nil {
		return callErrorf("--write: %w", err)
	}
	for _, each := range pair {
		fmt.Fprintf(cmd.ErrOrStderr(), "fitup: %s: driveline = %s\n", shownFrom(t.Root)(each.name), each.value)
	}
	return nil
}

// committed refuses files that are not as git last saw them. Where there is no
// git there is nothing to be ahead of.
func committed(t *tree.Tree, names ...string) error {
	if _, err := os.Stat(filepath.Join(t.Root, ".git")); err != nil {
		return nil
	}
	repository, err := tree.OpenRepository(t.Root)
	if err != nil {
		return callErrorf("%w, or give --force", err)
	}
	defer repository.Close()
	head, _, err := repository.Revision("HEAD")
	if err != nil {
		return callErrorf("nothing is committed yet: %w; commit the files, or give --force", err)
	}
	changes, err := repository.Changes("HEAD", false)
	if err != nil {
		return callErrorf("%w; give --force to write anyway", err)
	}
	for _, name := range names {
		if !slices.ContainsFunc(changes, func(c tree.Change) bool { return c.Is == name }) {
			continue
		}
		was, bad := head.Read(name)
		is, err := t.Read(name)
		if bad != nil || err != nil || !bytes.Equal(was, is) {
			return callErrorf("%s has changes that are not committed; commit them first, or give --force", name)
		}
	}
	return nil
}

// A edit is a file with one value replaced.
type edit struct {
	name, path string // in its tree, and on disk
	was, is    []byte
	value      string // now, as written
	mode       fs.FileMode
}

// An exchange is two files that have to change together.
type exchange [2]edit

// exchangeOf makes the exchange of two cars' drivelines.
func exchangeOf(t *tree.Tree, one, other string) (*exchange, error) {
	var files [2]*source.File
	var spans [2]source.Span
	e := &exchange{{name: one}, {name: other}}
	for i := range e {
		each := &e[i]
		text, err := t.Read(each.name)
		if err != nil {
			return nil, err
		}
		f, problems := source.Parse(each.name, text)
		if len(problems) > 0 {
			return nil, fmt.Errorf("%s is no TOML, so nothing in it can be exchanged; mend it first", each.name)
		}
		if _, there := f.Key(drivelineKey); !there {
			return nil, fmt.Errorf(`%s does not say which driveline is in it; write driveline = "none" below [car] first`, each.name)
		}
		each.was, each.path = text, filepath.Join(t.Root, filepath.FromSlash(each.name))
		info, err := os.Stat(each.path)
		if err != nil {
			return nil, err
		}
		each.mode = info.Mode().Perm()
		files[i], spans[i] = f, f.Find(drivelineKey)
	}
	for i := range e {
		from, to := files[1-i], files[i]
		value := from.Text[spans[1-i].Start:spans[1-i].End]
		if err := sameFrom(from, to); err != nil {
			return nil, err
		}
		at := len(e[i].was) - len(to.Text) // a byte order mark
		e[i].is = slices.Concat(e[i].was[:at+spans[i].Start], value, e[i].was[at+spans[i].End:])
		e[i].value = string(value)
	}
	return e, nil
}

// sameFrom asks that a reference means the same file in another car's folder.
func sameFrom(from, to *source.File) error {
	car, _ := from.Root["car"].(map[string]any)
	ref, _ := car["driveline"].(string)
	if ref == "none" || ref == "?" {
		return nil
	}
	here, err := tree.Join(from.Name, ref)
	there, bad := tree.Join(to.Name, ref)
	if err != nil || bad != nil || here != there {
		return fmt.Errorf("%s names its driveline %q, which is another file from %s; write the two values by hand", from.Name, ref, to.Name)
	}
	return nil
}

// write puts both files in place. Each new text, and what is needed to undo the
// first, lies beside its file before anything is renamed.
func (e *exchange) write(rename func(from, to string) error) error {
	var parts []string
	defer func() {
		for _, part := range parts {
			os.Remove(part) // what is in place is not there any more
		}
	}()
	lay := func(r edit, text []byte) (string, error) {
		part, err := laid(r, text)
		parts = append(parts, part)
		return part, err
	}
	one, err := lay(e[0], e[0].is)
	other, bad := lay(e[1], e[1].is)
	back, worse := lay(e[0], e[0].was)
	if err := errors.Join(err, bad, worse); err != nil {
		return fmt.Errorf("%w; nothing is changed", err)
	}
	for _, r := range e {
		if now, err := os.ReadFile(r.path); err != nil || !bytes.Equal(now, r.was) {
			return fmt.Errorf("%s has changed meanwhile; nothing is written, look at it and begin again", r.name)
		}
	}
	if err := rename(one, e[0].path); err != nil {
		return fmt.Errorf("%w; nothing is changed", err)
	}
	if err := rename(other, e[1].path); err != nil {
		if undone := rename(back, e[0].path); undone != nil {
			parts = slices.DeleteFunc(parts, func(part string) bool { return part == back })
			return fmt.Errorf("%w; %s is changed and %s is not, and the first could not be undone (%w): its old text is in %s", err, e[0].name, e[1].name, undone, back)
		}
		return fmt.Errorf("%w; the change of %s is undone, so both files are as they were", err, e[0].name)
	}
	syncFolders(e[0].path, e[1].path)
	return nil
}

// laid writes a text beside its file, onto the disk.
func laid(r edit, text []byte) (string, error) {
	part, err := os.CreateTemp(filepath.Dir(r.path), "."+filepath.Base(r.path)+".*")
	if err != nil {
		return "", err
	}
	_, err = part.Write(text)
	err = errors.Join(err, part.Chmod(r.mode), part.Sync(), part.Close())
	return part.Name(), err
}

// syncFolders makes renames last through a loss of power. A system that cannot
// do so for a folder is no reason to say that the write failed.
func syncFolders(paths ...string) {
	for _, path := range paths {
		if folder, err := os.Open(filepath.Dir(path)); err == nil {
			folder.Sync()
			folder.Close()
		}
	}
}
