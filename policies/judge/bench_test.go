package judge_test

import (
	"cmp"
	"os"
	"runtime"
	"runtime/debug"
	"sync"
	"sync/atomic"
	"testing"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// BenchmarkFleet judges every car of a folder on all cores and tells what of the
// time of a core goes into which part of the way. FITUP_FLEET is the folder; without
// it, it is the demo.
func BenchmarkFleet(b *testing.B) {
	folder := cmp.Or(os.Getenv("FITUP_FLEET"), root+"/cars")
	t, name, err := tree.Open(folder)
	if err != nil {
		b.Fatal(err)
	}
	names, err := t.Specs(name, nil)
	if err != nil {
		b.Fatal(err)
	}
	engine()                                          // is made once, however many cars there are
	defer debug.SetGCPercent(debug.SetGCPercent(100)) // as in the program
	var spent phases
	for b.Loop() {
		spent.add(fleetOnce(b, t, names))
	}
	cars := float64(spent.cars)
	b.ReportMetric(cars/float64(b.N), "cars/op")
	for unit, of := range map[string]time.Duration{"load-ns/car": spent.load, "derive-ns/car": spent.derive, "judge-ns/car": spent.judge} {
		b.ReportMetric(float64(of)/cars, unit)
	}
}

// phases are what cars took on a core.
type phases struct {
	cars                int
	load, derive, judge time.Duration
}

func (p *phases) add(o phases) {
	p.cars, p.load, p.derive, p.judge = p.cars+o.cars, p.load+o.load, p.derive+o.derive, p.judge+o.judge
}

// fleetOnce judges the cars among the names. Each worker has the specs that it read
// for itself: what cars share is read once by each.
func fleetOnce(b *testing.B, t *tree.Tree, names []string) phases {
	var next atomic.Int64
	var wait sync.WaitGroup
	all := make([]phases, runtime.GOMAXPROCS(0))
	for i := range all {
		wait.Go(func() {
			outfit := spec.NewOutfit(t)
			for at := next.Add(1) - 1; at < int64(len(names)); at = next.Add(1) - 1 {
				if one, ok := oneCar(b, outfit, names[at]); ok {
					all[i].add(one)
				}
			}
		})
	}
	wait.Wait()
	var sum phases
	for _, each := range all {
		sum.add(each)
	}
	return sum
}

// oneCar judges the car of a name. It returns false if the name is that of a
// driveline or shop file.
func oneCar(b *testing.B, outfit *spec.Outfit, name string) (phases, bool) {
	start := time.Now()
	car, ok := outfit.Car(name)
	if !ok {
		return phases{}, false
	}
	loaded := time.Now()
	joined := document.Join(car, day)
	workings.Derive(joined)
	encoded := joined.Value()
	derived := time.Now()
	if _, err := engine().Evaluate(b.Context(), encoded); err != nil {
		b.Error(err)
	}
	return phases{1, loaded.Sub(start), derived.Sub(loaded), time.Since(derived)}, true
}
