package main

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func TestColoured(t *testing.T) {
	for _, test := range []struct {
		flag, noColour string
		terminal, want bool
	}{
		{"auto", "", true, true},
		{"auto", "", false, false},
		{"auto", "1", true, false},
		{"always", "1", false, true},
		{"always", "", true, true},
		{"never", "", true, false},
	} {
		got, err := coloured(test.flag, test.noColour, test.terminal)
		if err != nil || got != test.want {
			t.Errorf("coloured(%q, %q, %v) = %v, %v, want %v", test.flag, test.noColour, test.terminal, got, err, test.want)
		}
	}
	if _, err := coloured("blue", "", true); codeOf(err) != exitInput {
		t.Errorf("a colour that is none: %v, want exit code %d", err, exitInput)
	}
}

// TestPrintFile shows that a file is replaced whole, or left as it was: also in its
// time of change, if it would hold the same.
func TestPrintFile(t *testing.T) {
	const old = "as it was\n"
	failure := errors.New("it went wrong")
	long := strings.Repeat("x", 64<<10) // a piece of what is compared at once
	for _, test := range []struct {
		name, before, print string
		err                 error
		touched             bool
	}{
		{name: "another text", before: old, print: "as it is\n", touched: true},
		{name: "the same", before: old, print: old},
		{name: "the same and more", before: long, print: long + "x", touched: true},
		{name: "less of the same", before: long + "x", print: long, touched: true},
		{name: "the same, long", before: long, print: long},
		{name: "it fails half way", before: old, print: "as", err: failure},
	} {
		t.Run(test.name, func(t *testing.T) {
			folder := t.TempDir()
			name := filepath.Join(folder, "report.json")
			if err := os.WriteFile(name, []byte(test.before), 0o600); err != nil {
				t.Fatal(err)
			}
			then := time.Unix(1_700_000_000, 0)
			if err := os.Chtimes(name, then, then); err != nil {
				t.Fatal(err)
			}
			err := printFile(name, func(w io.Writer) error {
				if _, err := io.WriteString(w, test.print); err != nil {
					return err
				}
				return test.err
			})
			if err != test.err {
				t.Fatalf("error %v, want %v", err, test.err)
			}
			want := test.print
			if test.err != nil {
				want = test.before
			}
			if got, err := os.ReadFile(name); string(got) != want || err != nil {
				t.Errorf("it holds %.20q (%v), want %.20q", got, err, want)
			}
			info, err := os.Stat(name)
			if err != nil {
				t.Fatal(err)
			}
			if touched := !info.ModTime().Equal(then); touched != test.touched {
				t.Errorf("touched: %v, want %v", touched, test.touched)
			}
			if info.Mode().Perm() != 0o600 {
				t.Errorf("its permissions are %v", info.Mode())
			}
			if left, err := os.ReadDir(folder); len(left) != 1 || err != nil {
				t.Errorf("in the folder is %v (%v)", left, err)
			}
		})
	}
}
