package swap

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"sync"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// An Adaptor is a fitting with two ends, as it lies in a chain: One towards the
// car, Other towards the driveline.
type Adaptor struct {
	Name       string // of the form, or as the shop calls it
	One, Other *document.Half
	Stock      bool     // in the shop's drawer
	Have       int      // how many are in it; 0 if that is not said
	Adds       *float64 // length, m; nil if it is not known
	Bore       *float64 // m; nil if it is not known
	Usual      bool     // nobody measured the bore: it is what such ends are usually drilled to
	Source     string   // source key of a standard form
	Clause     string
	Confidence string

	spec *spec.Adaptor
}

// newAdaptor makes an adaptor of what the shop, or the table of forms, says of it.
func newAdaptor(name string, a *spec.Adaptor) Adaptor {
	one, other := document.HalfOf(a.One), document.HalfOf(a.Other)
	one.Owner, other.Owner = "adaptor", "adaptor"
	made := Adaptor{
		Name: name, One: one, Other: other, spec: a,
		Adds: length(a.Adds.Given(), a.Adds.V.SI), Bore: length(a.Bore.Given(), a.Bore.V.SI),
	}
	if row, usual := workings.UsualBore(a); usual && made.Bore == nil {
		made.Bore, made.Usual = &row.Bore, true
	}
	return made
}

// Ends says what its two ends are.
func (a Adaptor) Ends() string { return endText(a.One) + " to " + endText(a.Other) }

func endText(h *document.Half) string {
	return strings.Join(strings.Fields(h.Size+" "+h.Gender.V+" "+h.Form.V), " ")
}

// A Chain joins two ends that do not meet.
type Chain struct {
	Adaptors []Adaptor
	Joints   int      // joints more than if the two ends met
	Adds     *float64 // length, m; nil if that of any is not known
	Bore     *float64 // least bore that is known, m
	Unbored  []string // those whose bore is not known
	Usual    bool     // the bore of one at least was not measured: what it costs is an estimate
	Buy      []string // what is not in stock
}

// A Drawer is all adaptors that a chain may be made of: the standard forms and
// what the shop has.
type Drawer []Adaptor

// standardForms are the adaptors of the table, one a pair of sizes.
var standardForms = sync.OnceValue(func() Drawer {
	var all Drawer
	for _, row := range tables.Adaptors() {
		for _, sizes := range row.Sizes {
			form := newAdaptor(row.Form, &spec.Adaptor{
				One: standardEnd(row.OneForm, row.OneGender, sizes[0]), Other: standardEnd(row.OtherForm, row.OtherGender, sizes[1]),
			})
			form.Source, form.Clause, form.Confidence = row.Source, row.Clause, row.Confidence
			all = append(all, form)
		}
	}
	return all
})

// standardEnd reads one end of the table; a test has read them all.
func standardEnd(form, gender, size string) spec.End {
	var end spec.End
	end.State = spec.Given
	must(end.Form.Decode(form))
	if gender != "" {
		must(end.Gender.Decode(gender))
	}
	must(end.Size.Decode(size))
	return end
}

func must(err error) {
	if err != nil {
		panic(fmt.Errorf("swap: table of adaptors: %w", err))
	}
}

// NewDrawer puts the shop's stock before the standard forms. The shop may be
// nil.
func NewDrawer(shop *spec.Shop) Drawer {
	var all Drawer
	if shop != nil {
		for name, a := range shop.Adaptors.All() {
			if a.Have.Given() && a.Have.V == 0 {
				continue
			}
			stock := newAdaptor(name, a)
			stock.Stock, stock.Have = true, int(a.Have.V)
			all = append(all, stock)
		}
	}
	return append(all, standardForms()...)
}

// Without is the drawer after a chain has been taken out of it: of what the shop
// has, there is one less, or none.
func (d Drawer) Without(c *Chain) Drawer {
	var left Drawer
	for _, a := range d {
		if a.Stock && a.Have > 0 {
			for _, taken := range c.Adaptors {
				if taken.Stock && taken.Name == a.Name {
					a.Have--
				}
			}
			if a.Have <= 0 {
				continue
			}
		}
		left = append(left, a)
	}
	return left
}

// Join finds the shortest chain that joins an end on the car to one on the
// driveline, of at most two adaptors; nil if there is none, and then it must be
// made. Of equally short chains it takes the one with least to buy, then the one
// that narrows least from size to size, then the shortest that is known, then
// the first by name.
func (d Drawer) Join(car, driveline *document.Half, tol Tolerances) *Chain {
	var turned Drawer // each adaptor both ways round
	for _, a := range d {
		turned = append(turned, a)
		a.One, a.Other = a.Other, a.One
		turned = append(turned, a)
	}
	meets := func(a, b *document.Half) bool { return mayMeet(a, b) && tol.Meet(a, b).Meets }
	var first, last Drawer
	for _, a := range turned {
		if meets(car, a.One) {
			first = append(first, a)
		}
		if meets(a.Other, driveline) {
			last = append(last, a)
		}
	}
	var best *Chain
	consider := func(adaptors ...Adaptor) {
		if c := newChain(adaptors); best == nil || compareChains(c, best) < 0 {
			best = c
		}
	}
	for _, a := range first {
		if meets(a.Other, driveline) {
			consider(a)
		}
	}
	if best != nil {
		return best
	}
	for _, a := range first {
		for _, b := range last {
			if meets(a.Other, b.One) {
				consider(a, b)
			}
		}
	}
	return best
}

// mayMeet rules out most pairs without working out what to say of them.
func mayMeet(a, b *document.Half) bool {
	one, other := a.Form.V, b.Form.V
	if one != other && !slices.Contains(partners[one], other) {
		return false
	}
	return a.Thread == nil || b.Thread == nil || a.Thread.Text == b.Thread.Text
}

func newChain(adaptors []Adaptor) *Chain {
	c := &Chain{Adaptors: adaptors, Joints: len(adaptors), Adds: new(float64)}
	for _, a := range adaptors {
		if !a.Stock {
			c.Buy = append(c.Buy, a.Name+", "+a.Ends())
		}
		switch {
		case a.Adds == nil:
			c.Adds = nil
		case c.Adds != nil:
			*c.Adds += *a.Adds
		}
		c.Usual = c.Usual || a.Usual
		if a.Bore == nil {
			c.Unbored = append(c.Unbored, a.Name)
		}
		if a.Bore != nil && (c.Bore == nil || *a.Bore < *c.Bore) {
			c.Bore = a.Bore
		}
	}
	return c
}

func compareChains(a, b *Chain) int {
	return cmp.Or(
		cmp.Compare(len(a.Adaptors), len(b.Adaptors)),
		cmp.Compare(len(a.Buy), len(b.Buy)),
		-cmp.Compare(a.narrowest(), b.narrowest()),
		cmp.Compare(known(a.Adds), known(b.Adds)),
		slices.CompareFunc(a.Adaptors, b.Adaptors, func(x, y Adaptor) int {
			return cmp.Or(cmp.Compare(x.Name, y.Name), cmp.Compare(x.Ends(), y.Ends()))
		}),
	)
}

// narrowest is the smallest size in a chain, as far as sizes can be compared: a
// dash in sixteenths of an inch, a thread or diameter by its diameter.
func (c *Chain) narrowest() float64 {
	least := 0.0
	for i, a := range c.Adaptors {
		for j, h := range []*document.Half{a.One, a.Other} {
			if size := passage(h); i+j == 0 || size < least {
				least = size
			}
		}
	}
	return least
}

func passage(h *document.Half) float64 {
	const sixteenth = 0.0254 / 16
	switch {
	case h.Dash != nil:
		return float64(*h.Dash) * sixteenth
	case h.Diameter != nil:
		return *h.Diameter
	case h.Thread != nil:
		return h.Thread.Major
	}
	return 0
}

// known puts a length that is not known after all that are.
func known(v *float64) float64 {
	if v == nil {
		return 1e3
	}
	return *v
}
