package workings_test

import (
	"os"
	"testing"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/unit"
	"fitup/spec/workings"
)

func TestWhole(t *testing.T) {
	o := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../testdata/whole")})
	c, ok := o.Car("car.toml")
	for _, p := range o.Problems() {
		t.Log(p.Error())
	}
	if !ok {
		t.Fatal("broken")
	}
	d := document.Join(c, time.Date(2025, 9, 20, 0, 0, 0, 0, time.UTC))
	for _, w := range workings.Derive(d) {
		v := "?"
		if w.Known {
			v = unit.Format(w.Value, w.Dimension, w.Unit)
		}
		t.Logf("%s %s = %s  [%s] miss %v guess %v note %q", w.Subject, w.Name, v, w.Formula, w.Missing, w.Guessed, w.Note)
	}
}
