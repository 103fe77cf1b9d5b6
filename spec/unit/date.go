package unit

import (
	"regexp"
	"strconv"
	"strings"
	"time"
)

// A Date is a date as a label gives it: a day, a month, or only a year.
type Date struct {
	Year  int
	Month time.Month // 0 if only the year is given
	Day   int        // 0 if only the month or year is given
	Text  string
}

func (d Date) String() string { return d.Text }

var dateForm = regexp.MustCompile(`^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$`)

// ParseDate reads "2022", "2022-06" or "2022-06-15".
func ParseDate(text string) (Date, error) {
	word := strings.TrimSpace(text)
	m := dateForm.FindStringSubmatch(word)
	if m == nil {
		return Date{}, wholly(text, said(word)+" is no date", "write it like 2022, 2022-06 or 2022-06-15")
	}
	d := Date{Text: word}
	d.Year, _ = strconv.Atoi(m[1])
	if d.Year < 1900 {
		return Date{}, wholly(text, "no car part is that old", "write a year from 1900 on")
	}
	if m[2] != "" {
		month, _ := strconv.Atoi(m[2])
		if month < 1 || month > 12 {
			return Date{}, wholly(text, word+" does not exist", "a month from 01 to 12 is due")
		}
		d.Month = time.Month(month)
	}
	if m[3] != "" {
		d.Day, _ = strconv.Atoi(m[3])
		if last := d.Last(); d.Day < 1 || last.Month() != d.Month {
			return Date{}, wholly(text, word+" does not exist", d.Month.String()+" "+m[1]+" has "+strconv.Itoa(monthEnd(d.Year, d.Month))+" days")
		}
	}
	return d, nil
}

func monthEnd(year int, month time.Month) int {
	return time.Date(year, month+1, 0, 0, 0, 0, 0, time.UTC).Day()
}

// First returns the first day that the label can mean: how a date of make is
// read. It is midnight, UTC.
func (d Date) First() time.Time {
	return time.Date(d.Year, max(d.Month, time.January), max(d.Day, 1), 0, 0, 0, 0, time.UTC)
}

// Last returns the last day that the label can mean: how an end of validity is
// read. It is midnight, UTC, at the start of that day.
func (d Date) Last() time.Time {
	month, day := d.Month, d.Day
	if month == 0 {
		month = time.December
	}
	if day == 0 {
		day = monthEnd(d.Year, month)
	}
	return time.Date(d.Year, month, day, 0, 0, 0, 0, time.UTC)
}
