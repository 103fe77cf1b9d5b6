package outfit

import (
	"cmp"
	"fmt"
	"io/fs"
	"path"
	"strings"

	"github.com/BurntSushi/toml"
)

// A Demo is the demo outfit, whose texts a fleet is drawn from. The demo is kept
// valid when keys change, and so is what is drawn from it.
type Demo struct {
	cars       []model           // by name
	drivelines map[string]string // texts by the name of the file, without .toml
	shop       string
	config     string
	faults     []fault
}

// A model is a car of the demo.
type model struct {
	name, text string
	driveline  string // the one fitted, by the name of its file; empty for none
}

func (m model) file() string { return "cars/" + m.name + ".toml" }

// faultsOf lists the faults that can be made in a car or in the driveline in it.
func (d *Demo) faultsOf(m model) []fault {
	var all []fault
	for _, f := range d.faults {
		if f.File == m.file() || m.driveline != "" && f.File == "cars/drivelines/"+m.driveline+".toml" {
			all = append(all, f)
		}
	}
	return all
}

// ReadDemo reads the demo from the folder of the repository.
func ReadDemo(repository fs.FS) (*Demo, error) {
	d := &Demo{drivelines: map[string]string{}}
	each := func(pattern string, take func(name, text string) error) error {
		files, err := fs.Glob(repository, pattern)
		if len(files) == 0 {
			return cmp.Or(err, fmt.Errorf("%s: there is none; give the folder of the repository", pattern))
		}
		for _, file := range files {
			text, err := fs.ReadFile(repository, file)
			if err != nil {
				return err
			}
			name := strings.TrimSuffix(path.Base(file), ".toml")
			if err := take(name, withoutSchema(string(text))); err != nil {
				return fmt.Errorf("%s: %w", file, err)
			}
		}
		return nil
	}
	err := cmp.Or(
		each("cars/[a-z]*.toml", d.addCar),
		each("cars/drivelines/*.toml", func(name, text string) error { d.drivelines[name] = text; return nil }),
		each("cars/shop/outfit.toml", func(_, text string) error { d.shop = text; return nil }),
		each("cars/.fitup.toml", func(_, text string) error { d.config = text; return nil }),
	)
	if err != nil {
		return nil, err
	}
	d.faults, err = readFaults(repository)
	return d, err
}

func (d *Demo) addCar(name, text string) error {
	var head struct{ Car struct{ Driveline string } }
	if _, err := toml.Decode(text, &head); err != nil {
		return err
	}
	m := model{name: name, text: text}
	if head.Car.Driveline != "none" {
		m.driveline = strings.TrimSuffix(path.Base(head.Car.Driveline), ".toml")
	}
	d.cars = append(d.cars, m)
	return nil
}

// withoutSchema takes out the first line, which names a schema that editors read.
func withoutSchema(text string) string {
	if line, rest, ok := strings.Cut(text, "\n"); ok && strings.HasPrefix(line, "#:schema") {
		return rest
	}
	return text
}
