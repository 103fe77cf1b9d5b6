// Nameless copies a profile from standard input to standard output without saying
// on what machine it was taken.
package main

import (
	"log"
	"os"

	"github.com/google/pprof/profile"
)

func main() {
	p, err := profile.Parse(os.Stdin)
	if err != nil {
		log.Fatal("nameless: ", err)
	}
	for _, m := range p.Mapping {
		m.File, m.BuildID = "", ""
	}
	p.TimeNanos, p.Comments = 0, nil
	if err := p.Write(os.Stdout); err != nil {
		log.Fatal("nameless: ", err)
	}
}
