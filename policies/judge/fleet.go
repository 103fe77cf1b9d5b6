package judge

import (
	"strings"

	"fitup/spec"
)

// fitted finds drivelines that several cars say are fitted. It reads nothing but
// which driveline each car names.
func fitted(report *Report, cars []*spec.Composition) {
	in := map[string][]*spec.File{}
	for _, c := range cars {
		if c.Car != nil && c.Driveline != nil && !c.Trial {
			in[c.Driveline.Name] = append(in[c.Driveline.Name], c.Car)
		}
	}
	for driveline, files := range in {
		for i, file := range files {
			others := make([]string, 0, len(files)-1)
			var also []Location
			for k, other := range files {
				if k != i {
					others = append(others, other.Name)
					also = append(also, locate(other, "car.driveline"))
				}
			}
			if len(others) == 0 {
				continue
			}
			f := ownFinding(fittedTwice, file, "car.driveline", "driveline", driveline, "others", strings.Join(others, ", "))
			f.Also = also
			report.Findings = append(report.Findings, f)
		}
	}
}
