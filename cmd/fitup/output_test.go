package main

import "testing"

func TestColoured(t *testing.T) {
	for _, test := range []struct {
		flag, noColour string
		terminal, want bool
	}{
		{"auto", "", true, true},
		{"auto", "", false, false},
		{"auto", "1", true, false},
		{"always", "1", false, true},
		{"always", "", true, true},
		{"never", "", true, false},
	} {
		got, err := coloured(test.flag, test.noColour, test.terminal)
		if err != nil || got != test.want {
			t.Errorf("coloured(%q, %q, %v) = %v, %v, want %v", test.flag, test.noColour, test.terminal, got, err, test.want)
		}
	}
	if _, err := coloured("blue", "", true); codeOf(err) != exitInput {
		t.Errorf("a colour that is none: %v, want exit code %d", err, exitInput)
	}
}
