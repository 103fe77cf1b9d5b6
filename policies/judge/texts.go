package judge

import (
	"strings"
	"sync"
)

// texts keeps one copy of each text. What is said of one car is said of many, and a
// text that is part of a file would hold on to all of it. Texts of their own, such as
// messages, do not gain by it. It is for several goroutines at once.
type texts struct {
	mu   sync.Mutex
	kept map[string]string
}

func newTexts() *texts { return &texts{kept: map[string]string{}} }

// one is the copy of a text that is kept.
func (t *texts) one(text string) string {
	t.mu.Lock()
	defer t.mu.Unlock()
	kept, ok := t.kept[text]
	if !ok {
		kept = strings.Clone(text)
		t.kept[kept] = kept
	}
	return kept
}
