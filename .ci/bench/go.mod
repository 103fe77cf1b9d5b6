// How fast fitup is, beside the stock opa program, on fleets made up for it: see run.
module fitup/ci/bench

go 1.26.0

require (
	github.com/BurntSushi/toml v1.6.0
	github.com/google/pprof v0.0.0-20261105003125-4bf881d7fb0b
	golang.org/x/perf v0.0.0-20260908200009-22c9c6c9d4da
	golang.org/x/sync v0.23.0
)

require github.com/aclements/go-moremath v0.0.0-20210112150236-f10218a38794 // indirect
