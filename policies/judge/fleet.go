package judge

import "strings"

// fitted finds drivelines that several cars say are fitted; in tells where, by
// driveline. It looks at nothing else.
func fitted(report *Report, in map[string][]spot) {
	for driveline, cars := range in {
		for i, car := range cars {
			others := make([]string, 0, len(cars)-1)
			var also []Location
			for k, other := range cars {
				if k != i {
					others = append(others, other.File)
					also = append(also, other.Location)
				}
			}
			if len(others) == 0 {
				continue
			}
			f := ownFinding(fittedTwice, car, "driveline", driveline, "others", strings.Join(others, ", "))
			f.Also = also
			report.Findings = append(report.Findings, f)
		}
	}
}
