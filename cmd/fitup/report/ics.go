package report

import (
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"strings"
	"time"
	"unicode/utf8"

	"fitup/policies/judge"
)

// icsDay is the form of a date in iCalendar.
const icsDay = "20060102"

// DueICS prints last days as events of a whole day, for a calendar to take in
// (RFC 5545). An item keeps its UID, so that taking in a later list moves its
// event and makes no second one. What has no last day is counted in the event on
// the day that the list reaches to, which says to look again; so there is always
// one event, as the standard asks for.
func DueICS(d *judge.Due, _ Style) ([]byte, error) {
	c := calendar{stamp: d.On.UTC().Format(icsDay + "T150405Z")}
	c.line("BEGIN", "VCALENDAR")
	c.line("VERSION", "2.0")
	c.line("PRODID", "-//fitup//due//EN")
	c.line("CALSCALE", "GREGORIAN")
	for _, i := range d.Dated {
		about := []string{fmt.Sprintf("%s:%d", i.File, i.Line), i.What + sayer(i), Closing}
		c.event(i.File+"|"+i.Path+"|"+i.What, i.Day, i.What+", last day", about)
	}
	c.event("look again", d.By, "look again at what runs out", []string{DueTally(d), Closing})
	c.line("END", "VCALENDAR")
	return []byte(c.String()), nil
}

type calendar struct {
	strings.Builder
	stamp string
}

func (c *calendar) event(id string, day time.Time, summary string, about []string) {
	sum := sha256.Sum256([]byte(id))
	c.line("BEGIN", "VEVENT")
	c.line("UID", hex.EncodeToString(sum[:16])+"@fitup")
	c.line("DTSTAMP", c.stamp)
	c.line("DTSTART;VALUE=DATE", day.Format(icsDay))
	c.line("SUMMARY", icsText(summary))
	for i := range about {
		about[i] = icsText(about[i])
	}
	c.line("DESCRIPTION", strings.Join(about, `\n`))
	c.line("TRANSP", "TRANSPARENT")
	c.line("END", "VEVENT")
}

// icsWidth is the most bytes of a line, without its end (3.1).
const icsWidth = 75

// line writes a content line, folded between characters.
func (c *calendar) line(name, value string) {
	left, width := name+":"+value, icsWidth
	for len(left) > width {
		at := width
		for !utf8.RuneStart(left[at]) {
			at--
		}
		c.WriteString(left[:at] + "\r\n ")
		left, width = left[at:], icsWidth-1 // the space counts
	}
	c.WriteString(left + "\r\n")
}

var icsEscapes = strings.NewReplacer(`\`, `\\`, ";", `\;`, ",", `\,`)

// icsText escapes a text (3.3.11). It has no line ends of its own.
func icsText(text string) string { return icsEscapes.Replace(Plain(text)) }
