package workings

import (
	"os"
	"testing"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/unit"
)

func TestZZDemo(t *testing.T) {
	o := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../..")})
	for _, car := range []string{"cars/haar.toml", "cars/mizzle.toml", "cars/squall.toml"} {
		c, ok := o.Car(car)
		if !ok {
			t.Log(o.Problems())
			continue
		}
		d := document.Join(c, time.Date(2025, 11, 25, 0, 0, 0, 0, time.UTC))
		start := time.Now()
		trace := Derive(d)
		t.Logf("=== %s %s %d workings in %v", car, d.Composition, len(trace), time.Since(start))
		for _, w := range trace {
			v := "?"
			if w.Known {
				v = unit.Format(w.Value, w.Dimension, w.Unit)
			}
			t.Logf("%s %s = %s [%s] miss %v guess %v {%s}", w.Subject, w.Name, v, w.Formula, w.Missing, w.Guessed, w.Note)
		}
	}
}
