// Package outfit draws fleets to measure with: varied, valid specs of an invented
// outfit. Each car is a car of the demo with another number of lines and circuits, other
// quantities, some of them guessed or never measured, here and there a fault, at
// some stage of the work. The same seed gives the same bytes, and a larger fleet
// begins with the cars of a smaller one.
package outfit

import (
	"fmt"
	"maps"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Write writes a fleet of so many cars into a folder, which it makes.
func (d *Demo) Write(folder string, seed uint64, cars int) error {
	w := writer{folder: folder}
	w.write(".fitup.toml", d.config)
	w.write("shop/outfit.toml", d.shop)
	lent := map[string]int{} // the car that a driveline is in, by the driveline's name
	for number := 1; number <= cars; number++ {
		c := d.draw(rand.New(rand.NewPCG(seed, uint64(number))), number)
		if c.driveline != "" {
			w.write(fmt.Sprintf("drivelines/%05d/%s.toml", number, c.engine), c.driveline)
			lent[c.engine] = number
		}
		w.write("cars/"+c.name+".toml", d.accepts(c.text, lent, &w))
	}
	return w.err
}

// accepts points the pair facts of a car whose bay waits at drivelines of the fleet:
// the last that were written, in whatever car they are, or one in no car.
func (d *Demo) accepts(spec string, lent map[string]int, w *writer) string {
	for _, name := range slices.Sorted(maps.Keys(d.drivelines)) {
		old := fmt.Sprintf("%q", "drivelines/"+name+".toml")
		if !strings.Contains(spec, old) {
			continue
		}
		if _, ok := lent[name]; !ok {
			w.write(fmt.Sprintf("drivelines/%05d/%s.toml", 0, name), strings.Replace(d.drivelines[name], `"../shop/`, `"../../shop/`, 1))
		}
		spec = strings.ReplaceAll(spec, old, fmt.Sprintf("\"../drivelines/%05d/%s.toml\"", lent[name], name))
	}
	return spec
}

// A writer writes files below a folder until one fails.
type writer struct {
	folder string
	err    error
}

func (w *writer) write(name, text string) {
	if w.err != nil {
		return
	}
	file := filepath.Join(w.folder, filepath.FromSlash(name))
	if w.err = os.MkdirAll(filepath.Dir(file), 0o755); w.err == nil {
		w.err = os.WriteFile(file, []byte(text), 0o644)
	}
}
