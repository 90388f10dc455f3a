package compile_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"vivary/compile"
	"vivary/compile/life"
	"vivary/internal/planned"
	"vivary/internal/randomplan"
)

// TestNobodyIsLost: whatever the log says, in whatever order, what came is here or has
// gone, each in just one box, and a number that cannot be changes nothing.
func TestNobodyIsLost(t *testing.T) {
	words, told := map[string]bool{}, 0
	for seed := range uint64(300) {
		p := randomplan.New(seed)
		ledger := p.Silly(12 * len(p.Boxes))
		for _, w := range p.Words() {
			words[w] = true
		}
		if wrong := unlike(t, p, ledger); wrong != "" {
			if told++; told <= 5 {
				t.Errorf("seed %d: %s", seed, wrong)
			}
		}
	}
	if told > 5 {
		t.Errorf("and %d more", told-5)
	}
	t.Logf("%d words were used", len(words))
}

// unlike says in which box the program counts others than the ledger, or "".
func unlike(t *testing.T, p *randomplan.Plan, k *randomplan.Ledger) string {
	here := 0
	for _, n := range k.Here {
		here += n
	}
	if k.Came != here+k.Went {
		t.Fatalf("seed %d: the ledger itself lost some: %d came, %d are here, %d went", p.Seed, k.Came, here, k.Went)
	}
	c, found := planned.Files(t, p.Files(p.Today))
	r := compile.Compile(c, found, p.Today.At(12*60, time.UTC))
	for _, l := range r.Lives {
		name := l.Plan.Name.V
		n, who := living(l, r)
		if n > k.Here[name] || n < k.Here[name]-k.Loose[name] {
			var log []string
			for _, x := range p.Log {
				if x.Box == name || strings.Contains(x.Rest, name) {
					log = append(log, strings.TrimSpace(x.Text()))
				}
			}
			return fmt.Sprintf("%d live in %s, and the program knows of %d: %s\n%s", k.Here[name], name, n, who, strings.Join(log, "\n"))
		}
	}
	return ""
}

// living is how many live in a box today, and who they are.
func living(l *life.Enclosure, r *compile.Result) (n int, who string) {
	var all []string
	for _, g := range l.Groups {
		n += g.Count(r.Today)
		all = append(all, fmt.Sprintf("%s %d", g.Animals.Name.V, g.Count(r.Today)))
	}
	return n, strings.Join(all, ", ")
}
