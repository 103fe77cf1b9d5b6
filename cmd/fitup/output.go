package main

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
)

// Widths of text: where there is no terminal, and the most that is used of one.
const (
	usualWidth     = 80
	narrowest      = 40
	widestAtScreen = 100
)

// addFormat adds --format, which may be given several times.
func addFormat[T any](cmd *cobra.Command, wanted *[]string, forms []report.Form[T]) {
	usage := "`FORMAT` to print, or FORMAT=FILE; may be given several times:"
	var names []string
	for _, f := range forms {
		usage += "\n  " + f.Name + ": " + f.About
		names = append(names, f.Name)
	}
	cmd.Flags().StringArrayVar(wanted, "format", nil, usage)
	complete(cmd, "format", names...)
}

// An output is a form to print, and where.
type output[T any] struct {
	form report.Form[T]
	file string // "" is standard output
}

// outputs reads the values of --format; without any the first form is printed.
func outputs[T any](wanted []string, forms []report.Form[T]) ([]output[T], error) {
	if len(wanted) == 0 {
		wanted = []string{forms[0].Name}
	}
	var all []output[T]
	for _, each := range wanted {
		name, file, toFile := strings.Cut(each, "=")
		i := slices.IndexFunc(forms, func(f report.Form[T]) bool { return f.Name == name })
		if i < 0 {
			var names []string
			for _, f := range forms {
				names = append(names, f.Name)
			}
			return nil, callErrorf("--format %s: no such format; write %s", each, words(names))
		}
		if toFile && file == "" {
			return nil, callErrorf("--format %s: the file is not named; write %s=FILE", each, name)
		}
		if slices.ContainsFunc(all, func(o output[T]) bool { return o.file == file }) {
			if file == "" {
				return nil, callErrorf("--format %s: standard output has one format already; write %s=FILE", each, name)
			}
			return nil, callErrorf("--format %s: that file has one format already; name another", each)
		}
		all = append(all, output[T]{forms[i], file})
	}
	return all, nil
}

// write prints data in every form that is wanted.
func write[T any](cmd *cobra.Command, outputs []output[T], data T, style report.Style) error {
	for _, o := range outputs {
		s := style
		if o.file != "" {
			s.Colour, s.Width, s.Whole = false, usualWidth, true
		}
		print := func(w io.Writer) error { return o.form.Print(w, data, s) }
		if o.file == "" {
			if err := buffered(cmd.OutOrStdout(), print); err != nil {
				return err
			}
			continue
		}
		if err := printFile(o.file, print); err != nil {
			return callErrorf("%w; give --format a file that can be written", err)
		}
	}
	return nil
}

// buffered prints through a buffer, which is emptied at the end.
func buffered(w io.Writer, print func(io.Writer) error) error {
	b := bufio.NewWriter(w)
	if err := print(b); err != nil {
		return err
	}
	return b.Flush()
}

// writeFile writes a text to a file, as printFile does.
func writeFile(name string, text []byte) error {
	return printFile(name, func(w io.Writer) error {
		_, err := w.Write(text)
		return err
	})
}

// printFile prints a file whole or not at all. It leaves one alone that holds the
// same already, so that a watcher is not woken for nothing.
func printFile(name string, print func(io.Writer) error) error {
	return files.pass(func() error { return replaceFile(name, print) })
}

func replaceFile(name string, print func(io.Writer) error) error {
	mode := os.FileMode(0o644)
	switch info, err := os.Stat(name); {
	case err != nil:
	case !info.Mode().IsRegular():
		return fillFile(name, print)
	default:
		mode = info.Mode().Perm()
	}
	if real, err := filepath.EvalSymlinks(name); err == nil {
		name = real // the link stays
	}
	part, err := os.CreateTemp(filepath.Dir(name), "."+filepath.Base(name)+".*")
	if failed, ok := errors.AsType[*fs.PathError](err); ok {
		failed.Path = name // not that of the part
	}
	if err != nil {
		return err
	}
	err = buffered(part, print)
	same := err == nil && sameText(name, part.Name())
	if err == nil {
		err = part.Chmod(mode)
	}
	if err == nil {
		err = part.Sync()
	}
	if closed := part.Close(); err == nil {
		err = closed
	}
	if err == nil && !same {
		err = os.Rename(part.Name(), name)
	}
	if err != nil || same {
		os.Remove(part.Name())
	}
	return err
}

// fillFile prints into what is no file that could be replaced: a pipe, say.
func fillFile(name string, print func(io.Writer) error) error {
	f, err := os.OpenFile(name, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	err = buffered(f, print)
	if closed := f.Close(); err == nil {
		err = closed
	}
	return err
}

// sameText reports whether two files hold the same.
func sameText(one, other string) bool {
	a, err := os.Open(one)
	if err != nil {
		return false
	}
	defer a.Close()
	b, err := os.Open(other)
	if err != nil {
		return false
	}
	defer b.Close()
	const piece = 64 << 10
	x, y := make([]byte, piece), make([]byte, piece)
	for {
		n, errA := io.ReadFull(a, x)
		m, errB := io.ReadFull(b, y)
		if !bytes.Equal(x[:n], y[:m]) || errA != errB { // both ended, or neither
			return false
		}
		if errA != nil {
			return errA == io.EOF || errA == io.ErrUnexpectedEOF
		}
	}
}

// addColour adds --color.
func addColour(cmd *cobra.Command, colour *string) {
	cmd.Flags().StringVar(colour, "color", "auto", "colours `WHEN`: auto, always or never;\nauto is on a terminal, without NO_COLOR")
	complete(cmd, "color", "auto", "always", "never")
}

// styleFor lays text out for what standard output is.
func styleFor(colour string) (report.Style, error) {
	screen := int(os.Stdout.Fd())
	terminal := term.IsTerminal(screen)
	s := report.Style{Width: usualWidth, Whole: !terminal, Shown: func(file string) string { return file }}
	if columns, _, err := term.GetSize(screen); err == nil {
		s.Width = min(max(columns, narrowest), widestAtScreen)
	}
	var err error
	s.Colour, err = coloured(colour, os.Getenv("NO_COLOR"), terminal && os.Getenv("TERM") != "dumb")
	return s, err
}

// coloured decides on colour: a flag goes before NO_COLOR (https://no-color.org),
// which says no unless it is empty, and that before the terminal.
func coloured(flag, noColour string, terminal bool) (bool, error) {
	switch flag {
	case "always":
		return true, nil
	case "never":
		return false, nil
	case "auto":
		return terminal && noColour == "", nil
	}
	return false, callErrorf("--color %s: write auto, always or never", flag)
}

// shownFrom tells how files of a tree are called from the folder that the call
// was made in.
func shownFrom(root string) func(file string) string {
	here, err := os.Getwd()
	if err == nil {
		here, err = filepath.EvalSymlinks(here)
	}
	return func(file string) string {
		if err != nil || root == "" {
			return file
		}
		return fleet.Shown(root, file, here)
	}
}
