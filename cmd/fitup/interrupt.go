package main

import "sync"

// files is the gate that everything goes through which writes a file: Ctrl-C
// closes it, so that nothing begins and what has begun is done.
var files gate

// A gate lets work through until it is closed. Work that has begun may begin more.
type gate struct {
	mu     sync.Mutex
	inside int
	closed bool
	empty  chan struct{} // made by close, if there is something to wait for
}

// pass does something that must not be left half done. Once the gate is closed it
// never returns: the program is about to end.
func (g *gate) pass(do func() error) error {
	g.mu.Lock()
	if g.closed && g.inside == 0 {
		g.mu.Unlock()
		select {}
	}
	g.inside++
	g.mu.Unlock()
	defer func() {
		g.mu.Lock()
		defer g.mu.Unlock()
		if g.inside--; g.inside == 0 && g.empty != nil {
			close(g.empty)
			g.empty = nil
		}
	}()
	return do()
}

// close lets nothing more begin, and waits for the end of what has begun.
func (g *gate) close() {
	g.mu.Lock()
	g.closed = true
	var empty chan struct{}
	if g.inside > 0 {
		if g.empty == nil {
			g.empty = make(chan struct{})
		}
		empty = g.empty
	}
	g.mu.Unlock()
	if empty != nil {
		<-empty
	}
}
