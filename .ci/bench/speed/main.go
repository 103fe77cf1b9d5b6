// Speed measures fitup beside the stock opa program, in one run on one machine, and
// prints a table. It asserts nothing: a machine that does something else meanwhile
// would fail it.
package main

import (
	"context"
	"flag"
	"fmt"
	"os"
	"os/signal"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"

	"fitup/ci/bench/outfit"
)

// day is what everything is judged for, so that a fleet does not age.
const day = "2026-11-25"

// seed draws the fleets.
const seed = 7

// A size says how much is measured.
type size struct {
	short   int // times that a single car, or less, is measured
	long    int // times that a fleet is measured
	fleet   int // cars beside stock opa
	cores   int // cars on one core and on two
	growing []int
}

var (
	full  = size{short: 25, long: 3, fleet: 1000, cores: 300, growing: []int{1000, 2500, 5000, 10000}}
	quick = size{short: 2, long: 1, fleet: 10, cores: 10, growing: []int{10, 20}}
)

// A bench is what there is to measure with.
type bench struct {
	repository string
	scratch    string // folder for fleets and documents
	size       size
	demo       *outfit.Demo // that fleets are drawn from

	fitup, opa              string // programs
	policiesTest, judgeTest string // programs with fitup's own benchmarks
	bundle                  string // the rules, packed
}

func main() {
	if len(os.Args) == 2 && os.Args[1] == loopWord {
		allocatingLoop()
		return
	}
	repository := flag.String("repository", "../..", "the folder of the repository")
	programs := flag.String("programs", "", "the folder with the programs fitup, opa, policies.test and judge.test")
	small := flag.Bool("quick", false, "measure little: show only that it can be measured")
	parts := flag.String("parts", "abcde", "what to measure: a one car, b a fleet, c growing fleets, d cores, e start-up")
	flag.Parse()
	b := &bench{
		repository: *repository, scratch: filepath.Join(*programs, "scratch"), size: full,
		fitup: filepath.Join(*programs, "fitup"), opa: filepath.Join(*programs, "opa"),
		policiesTest: filepath.Join(*programs, "policies.test"), judgeTest: filepath.Join(*programs, "judge.test"),
		bundle: filepath.Join(*programs, "rules.tar.gz"),
	}
	if *small {
		b.size = quick
	}
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	if err := b.measure(ctx, *parts); err != nil {
		fmt.Fprintln(os.Stderr, "speed:", err)
		os.Exit(1)
	}
}

// measure measures the parts and prints the table of them.
func (b *bench) measure(ctx context.Context, parts string) error {
	before := load()
	if err := b.prepare(ctx); err != nil {
		return err
	}
	steps := map[rune]func(context.Context) ([]row, error){
		'a': b.oneCar, 'b': b.fleetAgainstStock, 'c': b.growth, 'd': b.cores, 'e': b.start,
	}
	var rows []row
	for _, part := range parts {
		step, ok := steps[part]
		if !ok {
			return fmt.Errorf("--parts %s: %c is none of a, b, c, d and e", parts, part)
		}
		fmt.Fprintf(os.Stderr, "speed: measuring %c\n", part)
		more, err := step(ctx)
		if err != nil {
			return err
		}
		rows = append(rows, more...)
	}
	fmt.Printf("%s/%s, %d cores, %s; load before the run: %s.\n\n", runtime.GOOS, runtime.GOARCH, runtime.NumCPU(), runtime.Version(), before)
	return printTable(os.Stdout, rows)
}

// prepare packs the rules and reads what fleets are drawn from.
func (b *bench) prepare(ctx context.Context) error {
	if err := os.MkdirAll(b.scratch, 0o755); err != nil {
		return err
	}
	pack := call{argv: []string{b.fitup, "pack", "--config", "none", "-o", b.bundle}}
	if _, err := pack.run(ctx); err != nil {
		return err
	}
	var err error
	b.demo, err = outfit.ReadDemo(os.DirFS(b.repository))
	return err
}

// fleet is the folder of a fleet of so many cars, which it draws if it is not there.
func (b *bench) fleet(cars int) (folder string, err error) {
	folder = filepath.Join(b.scratch, "fleet-"+strconv.Itoa(cars))
	if _, err := os.Stat(folder); err == nil {
		return folder, nil
	}
	return folder, b.demo.Write(folder, seed, cars)
}

// check is the call that is measured: all rules on all cars of a folder, or on one.
func (b *bench) check(specs string, flags ...string) call {
	return call{argv: append([]string{b.fitup, "check", specs, "--on", day}, flags...)}
}

// load is how many programs wanted a core in the last minute, as Linux tells it.
func load() string {
	text, err := os.ReadFile("/proc/loadavg")
	if err != nil {
		return "unknown"
	}
	minute, _, _ := strings.Cut(string(text), " ")
	return minute
}
