package main

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"vivary/internal/randomplan"
)

// TestFormsAreOnePlan: whether enclosures are written out, or what they have in common
// stands in a template, or they are one block with numbers, phones show the very same. Who
// changes the form moves nothing, and no entry is a new one.
func TestFormsAreOnePlan(t *testing.T) {
	hold(t, 2, func(t testing.TB, p *randomplan.Plan) error {
		m, err := builtOn(t, p, p.Today, nil)
		if err != nil {
			return err
		}
		for _, f := range []struct {
			name string
			plan *randomplan.Plan
		}{
			{"by template", p.Templated()}, {"by rack", p.Racked()}, {"by numbers", p.Numbered()},
			{"by numbers and template", p.Templated().Numbered()}, {"by numbers in a rack", p.Racked().Numbered()},
		} {
			o, err := builtOn(t, f.plan, p.Today, m.feeds)
			if err != nil {
				return fmt.Errorf("%s: %w", f.name, err)
			}
			if o.refused != m.refused {
				return fmt.Errorf("%s it is refused, or not as it was: %v\n%s\n\n%s", f.name, o.found, p.Text(), f.plan.Text())
			}
			for _, name := range m.order {
				if !bytes.Equal(o.feeds[name], m.feeds[name]) {
					return fmt.Errorf("%s feed %s differs: %s\n%s\n\n%s", f.name, name, firstDifference(lines(m.feeds[name]), lines(o.feeds[name])), p.Text(), f.plan.Text())
				}
			}
		}
		return nil
	})
}

func lines(feed []byte) []string { return strings.Split(string(feed), "\r\n") }
