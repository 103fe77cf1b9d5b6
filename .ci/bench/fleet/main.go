// Fleet writes a fleet of made-up cars into a folder, to measure fitup with.
package main

import (
	"flag"
	"fmt"
	"os"

	"fitup/ci/bench/outfit"
)

func main() {
	seed := flag.Uint64("seed", 1, "what the fleet is drawn with; the same seed gives the same bytes")
	cars := flag.Int("cars", 1000, "how many cars")
	demo := flag.String("demo", "../..", "the folder of the repository, whose cars the fleet is drawn from")
	flag.Usage = func() {
		fmt.Fprintln(flag.CommandLine.Output(), "usage: fleet [flags] DIR")
		flag.PrintDefaults()
	}
	flag.Parse()
	if flag.NArg() != 1 || *cars < 1 {
		flag.Usage()
		os.Exit(2)
	}
	if err := write(*demo, flag.Arg(0), *seed, *cars); err != nil {
		fmt.Fprintln(os.Stderr, "fleet:", err)
		os.Exit(1)
	}
}

func write(demo, folder string, seed uint64, cars int) error {
	d, err := outfit.ReadDemo(os.DirFS(demo))
	if err != nil {
		return err
	}
	return d.Write(folder, seed, cars)
}
