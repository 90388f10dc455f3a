package life

import (
	"testing"

	"vivary/schema"
)

// TestEveryWordIsHeeded: a word of the log that nothing reads would be a fact passed
// over in silence.
func TestEveryWordIsHeeded(t *testing.T) {
	for _, w := range schema.LogWords {
		if heeded := words[w] != nil; heeded != (w.Subject == schema.OfAnimals) {
			t.Errorf("%s: subject %d, handler among those of animals: %v", w.Name, w.Subject, heeded)
		}
	}
}
