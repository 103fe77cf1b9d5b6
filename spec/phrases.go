package spec

import (
	"fmt"
	"regexp"

	"fitup/spec/unit"
)

// The phrases of the bench. What each may say stands in the comment on its type.
var (
	endPhrase = phrasing{"an end", "-8 male 37-flare 90deg steel", []form{
		looks(`(?P<size>` + aMetric + `(?: LH)?|` + aPipe + `|` + anInch + `(?: LH)?|-\d+|` + aNominal + `|size-\d+|` + aLength + `)`),
		oneOf("form", formWords{}),
		oneOf("gender", genderWords{}),
		oneOf("metal", metalWords{}),
		oneOf("seal", sealWords{}),
		looks(`(?P<bend>` + aNumber + ` ?deg)`),
		means("straight", "bend", "0 deg"),
		looks(`key-(?P<key>[^\s,]+)`),
		looks(`family-(?P<family>[^\s,]+)`),
		means("valved", "valved", ""),
	}}

	holesPhrase = phrasing{"a hole pattern", "2 x 10.5 mm clear, 70 mm apart fore-aft", []form{
		looks(aCount+`(?P<thread>`+aMetric+`|`+aPipe+`|`+anInch+`|`+aNominal+`) tapped(?: (?P<depth>`+aLength+`))?`, "tapped"),
		looks(aCount+`(?P<clear>`+aLength+`) clear`, "clear"),
		looks(`(?P<apart>` + aNumber + `|\?) x (?P<wide>` + aNumber + `|\?) ?(?P<unit>mm|in)`),
		looks(`(?P<apart>`+aLength+`) apart`, "apart"),
		looks(`on (?P<circle>`+aLength+`) circle`, "circle"),
		looks(`(?P<pilot>`+aLength+`) pilot`, "pilot"),
		looks(`(?P<pilot>no pilot)`).meaning("none"),
		looks(`long-side (?P<along>[a-z-]+)`, "long-side"),
		oneOf("along", axisWords{}),
		looks(`into (?P<into>[a-z-]+)`, "into"),
	}}

	hosePhrase = phrasing{"length, kind and date of a hose", "2.95 m of ptfe-8, 2023-02", []form{
		looks(`(?P<length>`+aLength+`) of (?P<kind>\?|[a-z0-9][a-z0-9-]*)`, "of"),
		looks(`(?P<made>\d{4}(?:-\d{2}){0,2})`),
	}}

	fasteningPhrase = phrasing{"a fastening", "2 x M10x1.5x35 10.9 hex, 50 N m, wire", []form{
		looks(aCount),
		looks(`(?P<thread>` + aMetric + `)(?:x(?P<length>` + aNumber + `)(?: ?mm)?)?`).in("mm"),
		looks(`(?P<thread>` + aNominal + `|` + aPipe + `|` + anInch + `)(?: ?x ?(?P<length>` + aLength + `))?`),
		oneOf("class", classWords{}),
		oneOf("head", headWords{}),
		oneOf("nut", nutWords{}),
		oneOf("lock", lockingWords{}),
		oneOf("threads", lubricationWords{}),
		quantity("torque", unit.Torque),
		looks(`(?P<across_flats>`+aLength+`) across-flats`, "across-flats"),
		looks(`into (?P<into>[a-z-]+)`, "into"),
		looks(`(?P<engaged>`+aLength+`) engaged`, "engaged"),
		alone(`(?P<washer>[^,]*[^,\s] washer)`, "washer"),
		means("use-once", "use-once", ""),
	}}

	injectorsPhrase = phrasing{"number and flow of the injectors", "5 x 1050 mL/min at 3.0 bar", []form{
		looks(`(?:`+aCount+`)?(?P<flow>~?\d[^,]*?) at (?P<pressure>~?\d[^,]*)`, "at"),
		alone(`measured with (?P<measured_with>[^,]+)`, "measured", "with"),
	}}

	tubePhrase = phrasing{"a tube, or a bar by half its diameter as the wall,", "45 x 2.5 mm cold-drawn steel", []form{
		looks(`(?P<outer>` + aNumber + `|\?) x (?P<wall>` + aNumber + `|\?) ?(?P<unit>mm|in)`),
		oneOf("made", drawnWords{}),
		oneOf("metal", metalWords{}),
	}}

	// joiningPhrase is the third string of a Meet.
	joiningPhrase = phrasing{"torque and lubrication of a joint", "35 N m, oiled", []form{
		quantity("torque", unit.Torque),
		oneOf("make-up", makeUpWords{}),
		oneOf("threads", lubricationWords{}),
		alone(`(?P<washers>[^,]*[^,\s] (?:washers?|O-rings?))`, "washer", "washers", "O-ring", "O-rings"),
		alone(`(?P<clamp>[^,]*[^,\s] clamp)`, "clamp"),
		means("never-open", "never-open", ""),
	}}

	meetPhrase = phrasing{due: "where, what and how tight", example: `["driveline.fuel-in", "female 37-flare 90deg", "35 N m, oiled"]`}
)

func (*End) phrasing() phrasing       { return endPhrase }
func (*Port) phrasing() phrasing      { return endPhrase }
func (*Holes) phrasing() phrasing     { return holesPhrase }
func (*HoseRun) phrasing() phrasing   { return hosePhrase }
func (*Fastening) phrasing() phrasing { return fasteningPhrase }
func (*Injectors) phrasing() phrasing { return injectorsPhrase }
func (*Tube) phrasing() phrasing      { return tubePhrase }
func (*Meet) phrasing() phrasing      { return meetPhrase }

func (*End) phrase(raw any) ([]wording, error)       { return endPhrase.read(raw) }
func (*Holes) phrase(raw any) ([]wording, error)     { return holesPhrase.read(raw) }
func (*HoseRun) phrase(raw any) ([]wording, error)   { return hosePhrase.read(raw) }
func (*Fastening) phrase(raw any) ([]wording, error) { return fasteningPhrase.read(raw) }
func (*Injectors) phrase(raw any) ([]wording, error) { return injectorsPhrase.read(raw) }
func (*Tube) phrase(raw any) ([]wording, error)      { return tubePhrase.read(raw) }

// phrase of a Port is that of its end, which reads it in its turn.
func (*Port) phrase(raw any) ([]wording, error) {
	text, ok := raw.(string)
	if !ok {
		_, err := endPhrase.read(raw)
		return nil, err
	}
	return []wording{{key: "end", value: text, end: len(text)}}, nil
}

var refForm = regexp.MustCompile(`^[a-z0-9-]+(?:\.[A-Za-z0-9-]+)+$`)

// phrase of a Meet is a list: where, what, how tight. One string is where.
func (m *Meet) phrase(raw any) ([]wording, error) {
	if where, ok := raw.(string); ok {
		return []wording{{key: "port", value: where, end: len(where)}}, nil
	}
	list, ok := raw.([]any)
	if !ok || len(list) == 0 || len(list) > 3 {
		p := m.phrasing()
		return nil, wrongType(raw, fmt.Sprintf("%s, such as %s", p.due, p.example))
	}
	texts := make([]string, len(list))
	for i, each := range list {
		if texts[i], ok = each.(string); !ok {
			return nil, inList(wrongType(each, "text in quotes; where more is to be said, a table in place of the list"), true, i)
		}
	}
	said := []wording{{key: "port", value: texts[0], element: "0", end: len(texts[0])}}
	if len(texts) > 1 {
		if !refForm.MatchString(texts[0]) && refForm.MatchString(texts[1]) {
			return nil, &unit.Error{Problem: "where and what are swapped", Want: fmt.Sprintf("[%q, %q]", texts[1], texts[0])}
		}
		said = append(said, wording{key: "end", value: texts[1], element: "1", end: len(texts[1])})
	}
	if len(texts) > 2 {
		rest, err := joiningPhrase.read(texts[2])
		if err != nil {
			return nil, inList(err, true, 2)
		}
		for _, w := range rest {
			w.element = "2"
			said = append(said, w)
		}
	}
	return said, nil
}
