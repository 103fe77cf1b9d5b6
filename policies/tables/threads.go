package tables

import "slices"

// A MetricThreadRow is one diameter of ISO metric thread.
type MetricThreadRow struct {
	Size      string    `yaml:"size"`       // diameter in mm: "10"
	Coarse    bool      `yaml:"coarse"`     // whether the first pitch is the coarse series
	PitchesMM []float64 `yaml:"pitches_mm"` // coarsest first
	Row       `yaml:",inline"`
}

// A UnifiedThreadRow is one size of unified thread, with the threads an inch of
// its series; 0 where a series has no such size.
type UnifiedThreadRow struct {
	Size      string  `yaml:"size"`
	Number    bool    `yaml:"number"` // a screw number, not inches
	Coarse    float64 `yaml:"coarse"`
	Fine      float64 `yaml:"fine"`
	ExtraFine float64 `yaml:"extra_fine"`
	Row       `yaml:",inline"`
}

// A PipeThreadRow is one size of pipe thread; its set is NPT, or G, which R
// shares.
type PipeThreadRow struct {
	Size      string  `yaml:"size"`
	TPI       float64 `yaml:"tpi"`
	MajorMM   float64 `yaml:"major_mm"`
	HandTurns float64 `yaml:"hand_turns"` // 0 if not known
	Row       `yaml:",inline"`
}

var (
	metricThreads  = load[MetricThreadRow]("metric_threads")
	unifiedThreads = load[UnifiedThreadRow]("unified_threads")
	pipeThreads    = load[PipeThreadRow]("pipe_threads")
)

// MetricThread returns the pitches made in a diameter, given in mm as "10".
func MetricThread(size string) (MetricThreadRow, bool) {
	return metricThreads().find(func(r MetricThreadRow) bool { return r.Size == size })
}

// UnifiedThread returns the series made in a size, given as "7/16" or "10".
func UnifiedThread(size string) (UnifiedThreadRow, bool) {
	return unifiedThreads().find(func(r UnifiedThreadRow) bool { return r.Size == size })
}

// PipeThread returns one size of the family NPT or G.
func PipeThread(family, size string) (PipeThreadRow, bool) {
	return pipeThreads().find(func(r PipeThreadRow) bool { return r.Set == family && r.Size == size })
}

// PipeSizes returns the sizes of the family NPT or G, smallest first.
func PipeSizes(family string) []string {
	var sizes []string
	for _, r := range pipeThreads().Rows {
		if r.Set == family {
			sizes = append(sizes, r.Size)
		}
	}
	return sizes
}

// A DashRow is one size of tube fitting.
type DashRow struct {
	Dash          int     `yaml:"dash"`
	TubeOD        float64 `yaml:"tube_od"` // m
	Flare37       string  `yaml:"flare_37"`
	Flare45       string  `yaml:"flare_45"`
	InvertedFlare string  `yaml:"inverted_flare"`
	SameThread    bool    `yaml:"same_thread"` // 37 and 45 degrees screw together

	Confidence45       string `yaml:"confidence_45"`
	ConfidenceInverted string `yaml:"confidence_inverted"`
	Row                `yaml:",inline"`
}

var dash = load[DashRow]("dash")

// DashSizes returns the sizes that fittings are made in, smallest first.
func DashSizes() []int {
	var sizes []int
	for _, r := range dash().Rows {
		sizes = append(sizes, r.Dash)
	}
	slices.Sort(sizes)
	return sizes
}

// FlareThread returns the threads of a dash size.
func FlareThread(size int) (DashRow, bool) {
	return dash().find(func(r DashRow) bool { return r.Dash == size })
}
