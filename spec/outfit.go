package spec

import (
	"cmp"
	"fmt"
	"path"
	"slices"
	"strings"

	"fitup/spec/source"
	"fitup/spec/tree"
)

// An Outfit loads the files of one run, each once, and puts together what
// belongs together. It is not for several goroutines at once.
type Outfit struct {
	// Read reads one file by itself. It is LoadFile, unless who makes many outfits
	// of much the same files sets one that remembers: a File is not changed once it
	// is read, and outfits may share it.
	Read func(t *tree.Tree, name string) (*File, []source.Problem)

	tree     *tree.Tree
	files    map[string]*File         // by real name
	problems map[string][]FileProblem // of each file; one with any is not judged
	pairing  map[string][]FileProblem // of files together with others; the files may still be judged apart
}

// NewOutfit makes an outfit of the files of a tree.
func NewOutfit(t *tree.Tree) *Outfit {
	return &Outfit{Read: LoadFile, tree: t, files: map[string]*File{}, problems: map[string][]FileProblem{}, pairing: map[string][]FileProblem{}}
}

// A FileProblem is a shape error of one file.
type FileProblem struct {
	File string
	source.Problem
	Place   source.Place
	Excerpt string // the line of the file
}

// Error is the problem on one line that an editor can follow.
func (p FileProblem) Error() string {
	text := fmt.Sprintf("%s:%d:%d: %s", p.File, p.Place.Line, p.Place.Column, p.Message)
	if p.Want != "" {
		text += "; " + p.Want
	}
	return text
}

// A Composition is what is judged together: a car, the driveline in it, and the
// workshop it is in.
type Composition struct {
	Car       *File // nil for a driveline alone
	Driveline *File // nil for an empty bay, and for a car that does not say
	Shop      *File // nil if neither names one
	Fit       *Fit  // what is true of this car with this driveline; nil if nothing is said
	Trial     bool  // the driveline is not the one fitted

	// Adaptors are what a swap screws between the end of a line and a port that it
	// does not meet, by the path of the end, from the line to the port. One that is
	// not of the shop's has no path.
	Adaptors map[string][]*Adaptor
}

// Stem is a file's name without its folder and ending, by which fits, weighings and
// dollies name a driveline.
func Stem(file string) string { return strings.TrimSuffix(path.Base(file), ".toml") }

// Load reads a file and those that it needs: its shop file, and the driveline
// that is in a car. It is read once, whatever it is called by. The file is never
// nil; what is wrong is in Problems.
func (o *Outfit) Load(name string) *File {
	real, err := o.tree.Resolve(name)
	if err != nil {
		real = name
	}
	if f, ok := o.files[real]; ok {
		return f
	}
	f, problems := o.Read(o.tree, real)
	o.files[real] = f // before what it refers to, which may be itself
	o.fail(f, problems...)
	switch f.Kind {
	case KindCar:
		if shop := o.follow(f, "car.shop", f.Car.Car.Shop, KindShop); shop != nil {
			o.fail(f, f.deadInShop(shop)...)
		}
		o.follow(f, "car.driveline", f.Car.Car.Driveline, KindDriveline)
		for name, fit := range f.Car.Fits.All() {
			o.resolve(f, "fits."+name+".file", fit.File)
		}
	case KindDriveline:
		if shop := o.follow(f, "driveline.shop", f.Driveline.Driveline.Shop, KindShop); shop != nil {
			o.fail(f, f.deadInShop(shop)...)
		}
	}
	return f
}

// Forget lets go of what a file holds. What is wrong with it stays known; should
// it be loaded again, it is read again.
func (o *Outfit) Forget(name string) { delete(o.files, name) }

// fail adds problems to a file.
func (o *Outfit) fail(f *File, problems ...source.Problem) { tell(o.problems, f, problems) }

// tell adds problems of a file to what is known of it, each once.
func tell(known map[string][]FileProblem, f *File, problems []source.Problem) {
	first := len(known[f.Name]) == 0
	for _, p := range problems {
		place := f.Place(p.Span)
		told := FileProblem{File: f.Name, Problem: p, Place: place, Excerpt: f.Line(place.Line)}
		if first || !slices.Contains(known[f.Name], told) {
			known[f.Name] = append(known[f.Name], told)
		}
	}
}

// resolve returns the real name of the file that a value refers to, or "".
func (o *Outfit) resolve(f *File, path string, ref Ref) string {
	if !ref.Given() {
		return ""
	}
	name, err := tree.Join(f.Name, ref.V)
	if err == nil {
		if name, err = o.tree.Resolve(name); err == nil {
			return name
		}
	}
	message, want, _ := strings.Cut(err.Error(), "; ")
	o.fail(f, f.problem(path, cmp.Or(want, "the name of a file, relative to the folder of this one"), "%s", message))
	return ""
}

// follow loads the file that a value refers to, which has to be of one kind. It
// returns nil if it is not, or cannot be used.
func (o *Outfit) follow(f *File, path string, ref Ref, kind FileKind) *File {
	real := o.resolve(f, path, ref)
	if real == "" {
		return nil
	}
	other := o.Load(real)
	if other.Kind != 0 && other.Kind != kind {
		o.fail(f, f.problem(path, fmt.Sprintf("the file of a %s", kind), "%s is the file of a %s", real, other.Kind))
		return nil
	}
	if other.Kind == 0 || o.broken(other) {
		return nil
	}
	return other
}

func (o *Outfit) broken(f *File) bool { return len(o.problems[f.Name]) > 0 }

// Problems lists what is wrong with all files loaded so far, by file, then by
// place, each once.
func (o *Outfit) Problems() []FileProblem {
	var all []FileProblem
	for _, known := range []map[string][]FileProblem{o.problems, o.pairing} {
		for _, problems := range known {
			all = append(all, problems...)
		}
	}
	slices.SortFunc(all, func(a, b FileProblem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Span.Start, b.Span.Start), cmp.Compare(a.Message, b.Message), cmp.Compare(a.Want, b.Want))
	})
	return slices.Compact(all)
}

// Car puts a car together with the driveline that it names and the shop file. It
// returns false if one of them is broken, or the name is not that of a car.
func (o *Outfit) Car(name string) (*Composition, bool) {
	car := o.Load(name)
	if car.Kind != KindCar || o.broken(car) {
		return nil, false
	}
	ref := car.Car.Car.Driveline
	if !ref.Given() {
		shop, ok := o.shop(car)
		return &Composition{Car: car, Shop: shop}, ok
	}
	driveline := o.follow(car, "car.driveline", ref, KindDriveline)
	if driveline == nil {
		return nil, false
	}
	return o.join(car, driveline, "car.driveline", false)
}

// Driveline is a driveline by itself, with its shop file.
func (o *Outfit) Driveline(name string) (*Composition, bool) {
	driveline := o.Load(name)
	if driveline.Kind != KindDriveline || o.broken(driveline) {
		return nil, false
	}
	shop, ok := o.shop(driveline)
	return &Composition{Driveline: driveline, Shop: shop}, ok
}

// CarsFor puts a driveline together with each of the cars that has it fitted, or
// that accepts it: one with a table in [fits] of its file's name, or whose
// `file` key names it. Cars and drivelines that are broken are left out, and
// told of in Problems.
func (o *Outfit) CarsFor(driveline string, cars []string) []*Composition {
	offered := o.Load(driveline)
	if offered.Kind != KindDriveline || o.broken(offered) {
		return nil
	}
	var found []*Composition
	for _, name := range cars {
		car := o.Load(name)
		if car.Kind != KindCar || o.broken(car) {
			continue
		}
		at, trial := "car.driveline", o.resolve(car, "car.driveline", car.Car.Car.Driveline) != offered.Name
		if trial {
			fit, _ := o.fit(car, offered)
			if fit == "" {
				continue
			}
			at = "fits." + fit
		}
		if c, ok := o.join(car, offered, at, trial); ok {
			found = append(found, c)
		}
	}
	return found
}

// fit finds what a car says of itself with a driveline: the table in [fits]
// whose `file` names it, else the one of its file's name.
func (o *Outfit) fit(car, driveline *File) (name string, fit *Fit) {
	stem := Stem(driveline.Name)
	for each, said := range car.Car.Fits.All() {
		switch {
		case said.File.Given():
			if o.resolve(car, "fits."+each+".file", said.File) == driveline.Name {
				return each, said
			}
		case each == stem:
			name, fit = each, said
		}
	}
	return name, fit
}

// join puts a car and a driveline together; at is the key that pairs them. They
// have to share one shop file, or one of them name none.
func (o *Outfit) join(car, driveline *File, at string, trial bool) (*Composition, bool) {
	carShop, carOK := o.shop(car)
	itsShop, itsOK := o.shop(driveline)
	if !carOK || !itsOK {
		return nil, false
	}
	shop := cmp.Or(carShop, itsShop)
	blamed, problems := car, []source.Problem(nil)
	switch {
	case shop == nil:
	case carShop == nil:
		problems = car.deadInShop(shop)
	case itsShop == nil:
		blamed, problems = driveline, driveline.deadInShop(shop)
	case carShop.Name != itsShop.Name:
		problems = []source.Problem{car.problem(at, "one shop file in both, or none in the driveline's",
			"the shop file of this car is %s, and that of %s is %s", carShop.Name, driveline.Name, itsShop.Name)}
	}
	if len(problems) > 0 {
		tell(o.pairing, blamed, problems)
		return nil, false
	}
	_, fit := o.fit(car, driveline)
	return &Composition{Car: car, Driveline: driveline, Shop: shop, Fit: fit, Trial: trial}, true
}

// shop is the shop file that a car or driveline names, nil if none. It returns
// false if it is broken.
func (o *Outfit) shop(f *File) (*File, bool) {
	at, ref := "car.shop", Ref{}
	if f.Kind == KindCar {
		ref = f.Car.Car.Shop
	} else {
		at, ref = "driveline.shop", f.Driveline.Driveline.Shop
	}
	if !ref.Given() {
		return nil, true
	}
	shop := o.follow(f, at, ref, KindShop)
	return shop, shop != nil
}
