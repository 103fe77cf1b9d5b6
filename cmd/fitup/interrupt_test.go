package main

import (
	"testing"
	"time"
)

// TestGate shows that what has begun is done, with what it begins itself, and that
// nothing begins after.
func TestGate(t *testing.T) {
	var g gate
	begun, resume, closed := make(chan struct{}), make(chan struct{}), make(chan struct{})
	var done []string
	go func() {
		_ = g.pass(func() error {
			close(begun)
			<-resume
			return g.pass(func() error {
				done = append(done, "inner")
				return nil
			})
		})
	}()
	<-begun
	go func() {
		g.close()
		close(closed)
	}()
	select {
	case <-closed:
		t.Fatal("it closed over what had begun")
	case <-time.After(50 * time.Millisecond):
	}
	close(resume)
	<-closed
	if len(done) != 1 {
		t.Error("what had begun was not done")
	}
	late := make(chan struct{})
	go func() {
		_ = g.pass(func() error { close(late); return nil })
	}()
	select {
	case <-late:
		t.Error("something began after the gate was closed")
	case <-time.After(50 * time.Millisecond):
	}
}
