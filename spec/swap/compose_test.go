package swap

import (
	"errors"
	"strings"
	"testing"
)

func TestMoves(t *testing.T) {
	m, err := FromCar(fleet(t), "wagtail.toml", "pipit.toml")
	if err != nil {
		t.Fatal(err)
	}
	if m.Driveline.Name != "lump.toml" || m.Occupied != nil {
		t.Errorf("%s goes, and %v is in the way", m.Driveline.Name, m.Occupied)
	}
	if m.From.Driveline != m.Driveline || m.Given.Driveline != nil || m.Given.Car != m.From.Car || m.Given.Shop == nil {
		t.Errorf("giving: %+v, then %+v", m.From, m.Given)
	}
	if m.Into.Driveline != nil || m.Received.Driveline != m.Driveline || m.Received.Fit == nil || !m.Received.Trial || m.Received.Shop == nil {
		t.Errorf("receiving: %+v, then %+v", m.Into, m.Received)
	}
}

func TestMoveFromTheBench(t *testing.T) {
	o := fleet(t, `driveline = "lump.toml" -> driveline = "none"`)
	m, err := FromBench(o, "lump.toml", "wagtail.toml")
	if err != nil {
		t.Fatal(err)
	}
	if m.From != nil || m.Given != nil || m.Received.Driveline == nil || m.Received.Fit == nil {
		t.Errorf("%+v", m)
	}
}

func TestMoveIntoACarThatSaysNothingOfIt(t *testing.T) {
	m, err := FromCar(fleet(t, `[fits.lump]
at = "-0.5, 0, 0.2 m"
nose-up = "0 deg"
behind = "lid" -> [fits.other]
file = "barn.toml"`), "wagtail.toml", "pipit.toml")
	if err != nil {
		t.Fatal(err)
	}
	if m.Received.Fit != nil || m.Received.Driveline == nil || !m.Received.Trial {
		t.Errorf("%+v", m.Received)
	}
}

func TestNoMove(t *testing.T) {
	for _, test := range []struct{ name, edit, from, into, want string }{
		{"one car", "", "wagtail.toml", "wagtail.toml", "wagtail.toml: gives and receives; name two cars"},
		{"nothing to give", "", "pipit.toml", "wagtail.toml", "pipit.toml: car.driveline: there is no driveline in it to give"},
		{"both have it", `driveline = "none" -> driveline = "lump.toml"`, "wagtail.toml", "pipit.toml", "pipit.toml: car.driveline: lump.toml is in it already"},
		{"not a car", "", "lump.toml", "pipit.toml", "lump.toml: it is the file of a driveline, and that of a car is wanted"},
		{"not a car to go into", "", "wagtail.toml", "barn.toml", "barn.toml: it is the file of a shop, and that of a car is wanted"},
		{"no such file", "", "wagtail.toml", "dunnock.toml", "dunnock.toml: it, or a file that it needs, cannot be used: see what is wrong with it"},
	} {
		t.Run(test.name, func(t *testing.T) {
			var edits []string
			if test.edit != "" {
				edits = append(edits, test.edit)
			}
			_, err := FromCar(fleet(t, edits...), test.from, test.into)
			var cannot *CannotMove
			if !errors.As(err, &cannot) || err.Error() != test.want {
				t.Errorf("got %v, want %s", err, test.want)
			}
		})
	}
	if _, err := FromBench(fleet(t), "wagtail.toml", "pipit.toml"); err == nil || !strings.Contains(err.Error(), "that of a driveline is wanted") {
		t.Errorf("a car on the bench: %v", err)
	}
}

// TestMoveNamesWhatIsInTheWay moves a driveline into a car that has another one.
func TestMoveNamesWhatIsInTheWay(t *testing.T) {
	o := fleet(t, `driveline = "none" -> driveline = "other.toml"`)
	m, err := FromCar(o, "wagtail.toml", "pipit.toml")
	if err != nil {
		t.Fatal(err)
	}
	if m.Occupied == nil || m.Occupied.Name != "other.toml" || m.Received.Driveline.Name != "lump.toml" {
		t.Errorf("%+v", m)
	}
}
