package judge

import (
	"context"
	"fmt"
	"slices"
	"strconv"
	"testing"
	"testing/fstest"
	"time"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/tree"
)

// FuzzWaivers writes any texts into a waiver. It never sets a danger to a person
// aside, and whatever it sets aside is what it names, for no longer than it says.
func FuzzWaivers(f *testing.F) {
	for _, text := range [][4]string{
		{"own.short", "lines.feed", "new one ordered", "2026-12-31"}, {"own.deadly", "lines.feed", "it will do", "2026-12-31"},
		{"own", "lines", "x", "2030"}, {"own.short", "lines.feed#hose", "", "2026"}, {"own.*", "*", "x", "9999-12-31"},
		{"OWN.SHORT", "lines.feed ", "x", "2026-03-01"}, {"own.short", "lines.feed", "x", "2026-02"}, {"waiver.unused", "waivers.w", "x", "2027"}, {"", "", "", ""},
	} {
		f.Add(text[0], text[1], text[2], text[3])
	}
	engine, err := policies.New(context.Background(), policies.Options{Only: []string{"own"}, Own: []policies.Folder{folder()}})
	if err != nil {
		f.Fatal(err)
	}
	day := time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC)
	f.Fuzz(func(t *testing.T, rule, on, why, until string) {
		quote := func(text string) string { return strconv.QuoteToASCII(text) }
		files := fstest.MapFS{"shop.toml": {Data: []byte(shopFile)}, "four.toml": {Data: []byte("[driveline]\nname = \"Four\"\nshop = \"shop.toml\"\n")}}
		files["car.toml"] = &fstest.MapFile{Data: []byte(car("four.toml", fmt.Sprintf(
			"[lines.feed]\nhose = \"1.5 in of braid\"\nsleeve = \"short\"\n[lines.back]\nhose = \"1.5 in of braid\"\nsleeve = \"deadly\"\n"+
				"[waivers.w]\nrule = %s\non = [%s]\nwhy = %s\nuntil = %s\n", quote(rule), quote(on), quote(why), quote(until))))}
		outfit := spec.NewOutfit(&tree.Tree{FS: files})
		composed, ok := outfit.Car("car.toml")
		if !ok {
			return // it is malformed, and waives nothing
		}
		run := &Run{Engine: engine, Date: day, Whole: true}
		report, err := run.Judge(context.Background(), []*spec.Composition{composed})
		if err != nil {
			t.Fatal(err)
		}
		danger := func(f Finding) bool { return f.Rule == "own.deadly" }
		if slices.ContainsFunc(report.Waived, danger) || !slices.ContainsFunc(report.Findings, danger) {
			t.Errorf("the danger is set aside: %+v", report.Waived)
		}
		for _, f := range report.Waived {
			if f.Rule != rule || f.Path != on || f.Waiver == nil || f.Waiver.Why != why || f.Waiver.Until.Before(day) {
				t.Errorf("set aside by rule %q on %q until %q: %+v", rule, on, until, f)
			}
		}
		if n := len(report.Findings) + len(report.Waived); n < 2 {
			t.Errorf("%d findings: one is lost", n)
		}
	})
}
