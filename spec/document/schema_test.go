package document

import (
	"testing"
)

func TestSchemaMakes(t *testing.T) {
	t.Logf("%d bytes", len(Schema()))
}
