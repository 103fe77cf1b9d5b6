package judge

import "strings"

// fitted finds drivelines that several cars say are fitted. It looks at nothing but
// which driveline each car names.
func fitted(report *Report, opinions []opinion) {
	in := map[string][]spot{}
	for _, o := range opinions {
		if o.fitted != nil {
			in[o.driveline] = append(in[o.driveline], *o.fitted)
		}
	}
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
