package main

import (
	"encoding/json"
	"encoding/xml"
	"errors"
	"io"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"golang.org/x/net/html"
)

const sheetDay = "2026-11-25"

// sheets are calls for all sheets that the demo allows: each car, each swap.
var sheets = map[string]struct {
	args []string
	exit int
}{
	"haar":              {[]string{"cars/haar.toml"}, exitGood},
	"mizzle":            {[]string{"cars/mizzle.toml"}, exitGood},
	"squall":            {[]string{"cars/squall.toml"}, exitGood},
	"mizzle into haar":  {[]string{"--from", "cars/mizzle.toml", "--into", "cars/haar.toml"}, exitFindings},
	"squall into haar":  {[]string{"--from", "cars/squall.toml", "--into", "cars/haar.toml"}, exitFindings},
	"mizzle for squall": {[]string{"--from", "cars/mizzle.toml", "--into", "cars/squall.toml"}, exitFindings},
	"squall for mizzle": {[]string{"--from", "cars/squall.toml", "--into", "cars/mizzle.toml"}, exitFindings},
}

// Whatever check and swap say of the demo is on its sheets, in the words that they
// use.
func TestSheetHoldsTheReport(t *testing.T) {
	demo(t)
	for name, of := range sheets {
		t.Run(name, func(t *testing.T) {
			seen := readable(t, call(t, of.exit, append([]string{"sheet", "--on", sheetDay}, of.args...)...))
			texts := 0
			for _, text := range wantedOn(t, of.args, of.exit) {
				texts++
				if !strings.Contains(seen, strings.Join(strings.Fields(text), " ")) {
					t.Errorf("the sheet does not say: %s", text)
				}
			}
			if texts == 0 {
				t.Error("nothing is asked of the sheet")
			}
			// A title of a source may have the word; a verdict may not.
			body, _, _ := strings.Cut(seen, " Sources ")
			if word := regexp.MustCompile(`(?i)\bsafe\b.{0,30}`).FindString(body); word != "" {
				t.Errorf("a verdict: %s", word)
			}
		})
	}
}

// wantedOn is what other commands say of the same cars.
func wantedOn(t *testing.T, args []string, exit int) []string {
	t.Helper()
	type finding struct{ Message, Fix, Caution string }
	var texts []string
	add := func(found []finding) {
		for _, f := range found {
			texts = append(texts, f.Message, f.Fix, f.Caution)
		}
	}
	if len(args) == 1 {
		var check struct{ Findings []finding }
		decode(t, call(t, exit, "check", args[0], "--on", sheetDay, "--format", "json"), &check)
		add(check.Findings)
		return append(texts, "No dangers, no faults")
	}
	var swap struct {
		Appears []finding
		Order   []struct {
			Steps []struct {
				Do, Torque   string
				Tools, Notes []string
			}
		}
		Lists []struct {
			Title string
			Lines []string
		}
		Withheld []struct{ Why []string }
	}
	decode(t, call(t, exit, append([]string{"swap", "--on", sheetDay, "--format", "json"}, args...)...), &swap)
	add(swap.Appears)
	for _, way := range swap.Order {
		for _, s := range way.Steps {
			texts = append(texts, slices.Concat([]string{s.Do, s.Torque}, s.Tools, s.Notes)...)
		}
	}
	for _, list := range swap.Lists {
		texts = append(append(texts, list.Title), list.Lines...)
	}
	for _, w := range swap.Withheld {
		texts = append(texts, w.Why...)
	}
	return texts
}

func decode(t *testing.T, text string, into any) {
	t.Helper()
	if err := json.Unmarshal([]byte(text), into); err != nil {
		t.Fatal(err)
	}
}

// readable is what is read on a page, with single spaces.
func readable(t *testing.T, page string) string {
	t.Helper()
	root, err := html.Parse(strings.NewReader(page))
	if err != nil {
		t.Fatal(err)
	}
	var words []string
	for n := range root.Descendants() {
		if n.Type == html.TextNode && n.Parent.Data != "style" {
			words = append(words, strings.Fields(n.Data)...)
		}
	}
	return strings.Join(words, " ")
}

// The same specs make the same bytes.
func TestSheetSameBytes(t *testing.T) {
	demo(t)
	of := sheets["mizzle into haar"]
	args := append([]string{"sheet", "--on", sheetDay}, of.args...)
	first := call(t, of.exit, args...)
	for range 3 {
		if call(t, of.exit, args...) != first {
			t.Fatal("the same call makes another sheet")
		}
	}
}

// Each drawing of a sheet is a file of its own that an XML reader takes, and is on
// the page under the same title.
func TestSheetDrawings(t *testing.T) {
	demo(t)
	for name, of := range sheets {
		t.Run(name, func(t *testing.T) {
			folder := filepath.Join(t.TempDir(), "drawings")
			args := append([]string{"sheet", "--on", sheetDay}, of.args...)
			page := call(t, of.exit, args...)
			call(t, of.exit, append(args, "--format", "svg", "-o", folder)...)
			files, err := os.ReadDir(folder)
			if err != nil {
				t.Fatal(err)
			}
			if len(files) != strings.Count(page, "<svg ") {
				t.Errorf("%d files, %d drawings on the page", len(files), strings.Count(page, "<svg "))
			}
			for _, f := range files {
				text := read(t, filepath.Join(folder, f.Name()))
				for d := xml.NewDecoder(strings.NewReader(text)); ; {
					if _, err := d.Token(); errors.Is(err, io.EOF) {
						break
					} else if err != nil {
						t.Fatalf("%s: %v", f.Name(), err)
					}
				}
				if title := regexp.MustCompile(`(?s)<title[^>]*>(.*?)</title>`).FindStringSubmatch(text); title == nil || title[1] == "" || !strings.Contains(page, title[1]) {
					t.Errorf("%s has the title %q, which is not on the page", f.Name(), title)
				}
			}
		})
	}
}
