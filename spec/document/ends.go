package document

import (
	"math"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/unit"
)

// sealOf is what seals each form, where the end does not say otherwise. A form
// that is not here seals nothing: a stud, a rod, a spline.
var sealOf = map[string]string{
	"37-flare": "cone", "45-flare": "cone", "inverted-flare": "cone", "bubble-flare": "cone",
	"O-ring-boss": "O-ring", "metric-O-ring": "O-ring",
	"washer-face": "washer", "banjo": "washer",
	"taper-pipe": "taper",
	"bead":       "clamp", "barb": "clamp", "hose": "clamp", "plain-tube": "clamp",
	"V-band": "metal-face", "slip": "clamp",
	"dry-break": "coupling", "push-connector": "coupling",
}

// seatOf is the half angle of each form's cone, in degrees. The seat of an
// inverted flare is cut at 42 degrees for a 45 degree tube.
var seatOf = map[string]float64{"37-flare": 37, "45-flare": 45, "inverted-flare": 45}

// threadOf gives the thread that a dash size has in each form.
var threadOf = map[string]func(tables.DashRow) string{
	"37-flare":       func(r tables.DashRow) string { return r.Flare37 },
	"O-ring-boss":    func(r tables.DashRow) string { return r.Flare37 },
	"45-flare":       func(r tables.DashRow) string { return r.Flare45 },
	"inverted-flare": func(r tables.DashRow) string { return r.InvertedFlare },
}

// half works out what an end implies. size and metal stand in for what it leaves
// out: the size of the hose that it is on, and the usual metal of its file.
func half(end spec.End, path, owner, size, metal string) *Half {
	h := &Half{End: end, Path: path, Owner: owner, Size: end.Size.Usually(size)}
	h.End.Path = ""
	h.Metal = end.Metal.V
	if h.Metal == "" && end.Metal.State == spec.Unsaid {
		h.Metal = metal
	}
	form := end.Form.V
	h.Seal = end.Seal.Usually(sealOf[form])
	if angle, cone := seatOf[form]; cone {
		h.Seat = pointer(angle * math.Pi / 180)
	}
	if end.Thread.Given() {
		h.Thread = threadFigures(end.Thread.V)
	}
	h.sized(form)
	return h
}

// HalfOf works out what an end implies that belongs to no spec, such as that of
// an adaptor in stock.
func HalfOf(end spec.End) *Half { return half(end, end.Path, "", "", "") }

// sized reads the size as the trade writes it: a dash, a thread or a diameter.
func (h *Half) sized(form string) {
	if dash, err := unit.ParseDash(h.Size); err == nil {
		h.Dash = pointer(int(dash))
		row, known := tables.FlareThread(int(dash))
		if name := threadOf[form]; known && name != nil && h.Thread == nil {
			if thread, err := unit.ParseThread(name(row)); err == nil {
				h.Thread = threadFigures(thread)
			}
		}
		return
	}
	if q, err := unit.Parse(h.Size, unit.Length); err == nil {
		h.Diameter = pointer(q.SI)
		return
	}
	if thread, err := unit.ParseThread(h.Size); err == nil && h.Thread == nil {
		h.Thread = threadFigures(thread)
	}
}

func threadFigures(t unit.Thread) *Thread {
	return &Thread{System: string(t.System), Major: t.Major, Pitch: t.Pitch, Text: t.String()}
}

func pointer[T any](v T) *T { return &v }

// fluidGroup names a fluid as the compatibility table does; "" for one that the
// table of fluids does not hold.
func fluidGroup(fluid string) string {
	row, _ := tables.Fluid(fluid)
	return row.Group
}
