// Command mutate asks whether tests notice that a program is wrong: it changes one
// place at a time and runs them. What survives is a place that no test speaks of.
package main

import (
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"time"
)

func main() {
	n := flag.Int("n", 400, "how many mutants are sampled")
	seed := flag.Uint64("seed", 1, "of the sample")
	parallel := flag.Int("parallel", 2, "how many are tested at once")
	least := flag.Float64("least", 0, "exit with 1 if fewer of a hundred are killed")
	only := flag.Bool("list", false, "list the sample and run nothing")
	files := flag.String("files", "", "only in files of these names, with commas between them")
	data := flag.String("data", "testdata/mutate", "the folder of killers.txt and equivalents.txt")
	flag.Parse()
	s := session{n: *n}
	if *files != "" {
		s.files = strings.Split(*files, ",")
	}
	if err := s.prepare(*data, *seed, flag.Args()); err != nil {
		fmt.Fprintln(os.Stderr, "mutate:", err)
		os.Exit(2)
	}
	if *only {
		for _, m := range s.sample[:min(s.n, len(s.sample))] {
			fmt.Printf("%d\t%s\n", m.line, m.key())
		}
		return
	}
	begun := time.Now()
	if err := s.run(*parallel); err != nil {
		fmt.Fprintln(os.Stderr, "mutate:", err)
		os.Exit(2)
	}
	if rate := s.report(time.Since(begun)); rate < *least {
		os.Exit(1)
	}
}

// session is one run over some packages.
type session struct {
	n           int
	files       []string // that alone are changed; empty for all
	sample      []mutant // all there are, in the order in which they are taken
	killers     map[string][]*killer
	equivalents map[string]string

	mu    sync.Mutex
	next  int // in sample
	taken int // counted, or still running
	tally map[string]*tally
	err   error
}

// tally is what became of the mutants of a package.
type tally struct {
	killed, equivalent, unbuilt int
	survivors                   []*mutant
}

// prepare collects the mutants of the packages, which are folders below the
// module's root, and shuffles them.
func (s *session) prepare(data string, seed uint64, packages []string) error {
	var err error
	if s.killers, err = readKillers(filepath.Join(data, "killers.txt")); err != nil {
		return err
	}
	if s.equivalents, err = readEquivalents(filepath.Join(data, "equivalents.txt")); err != nil {
		return err
	}
	s.tally = map[string]*tally{}
	for _, p := range packages {
		p = filepath.ToSlash(filepath.Clean(p))
		if s.tally[p] = new(tally); s.killers[p] == nil {
			s.killers[p] = []*killer{{path: p}}
		}
		files, err := filepath.Glob(p + "/*.go")
		if err != nil || len(files) == 0 {
			return fmt.Errorf("%s is no package of Go (%v)", p, err)
		}
		for _, file := range files {
			if strings.HasSuffix(file, "_test.go") || len(s.files) > 0 && !slices.Contains(s.files, filepath.Base(file)) {
				continue
			}
			source, err := os.ReadFile(file)
			if err != nil {
				return err
			}
			found, err := mutants(filepath.ToSlash(file), source)
			if err != nil {
				return err
			}
			s.sample = append(s.sample, found...)
		}
	}
	s.stale()
	r := rand.New(rand.NewPCG(seed, 0))
	r.Shuffle(len(s.sample), func(i, k int) { s.sample[i], s.sample[k] = s.sample[k], s.sample[i] })
	return nil
}

// stale warns of reasons for mutants that there are no more.
func (s *session) stale() {
	there := map[string]bool{}
	for i := range s.sample {
		there[s.sample[i].key()] = true
	}
	for key := range s.equivalents {
		file, _, _ := strings.Cut(key, "\t")
		if s.tally[filepath.ToSlash(filepath.Dir(file))] != nil && !there[key] {
			fmt.Printf("no longer there, take it out of equivalents.txt: %s\n", key)
		}
	}
}

// run times every killer with nothing changed, then tests the sample.
func (s *session) run(parallel int) error {
	timed := map[*killer]bool{}
	for p := range s.tally {
		for _, k := range s.killers[p] {
			if timed[k] {
				continue
			}
			timed[k] = true
			k.took = 10 * time.Minute // nothing is known yet
			begun := time.Now()
			if o, out := k.test(""); o != survived {
				return fmt.Errorf("the tests of %s fail with nothing changed:\n%s", k.path, out)
			}
			k.took = time.Since(begun)
		}
	}
	var wg sync.WaitGroup
	for range parallel {
		wg.Go(s.work)
	}
	wg.Wait()
	return s.err
}

// work takes mutants in the order of the sample. One that is no program gives its
// place to the next, so that the sample does not depend on who is quicker.
func (s *session) work() {
	dir, err := os.MkdirTemp("", "mutate")
	if err != nil {
		s.fail(err)
		return
	}
	defer os.RemoveAll(dir)
	for {
		m := s.take()
		if m == nil {
			return
		}
		begun := time.Now()
		o, by, err := kill(m, s.killers[filepath.ToSlash(filepath.Dir(m.file))], dir)
		if err != nil {
			s.fail(err)
			return
		}
		s.count(m, o, by, time.Since(begun))
	}
}

// take returns the next mutant that is to be tested, or nil.
func (s *session) take() *mutant {
	s.mu.Lock()
	defer s.mu.Unlock()
	for s.err == nil && s.taken < s.n && s.next < len(s.sample) {
		m := &s.sample[s.next]
		s.next++
		s.taken++
		if s.equivalents[m.key()] == "" {
			return m
		}
		s.of(m).equivalent++
	}
	return nil
}

func (s *session) of(m *mutant) *tally { return s.tally[filepath.ToSlash(filepath.Dir(m.file))] }

func (s *session) count(m *mutant, o outcome, by *killer, took time.Duration) {
	s.mu.Lock()
	defer s.mu.Unlock()
	t, who := s.of(m), ""
	switch o {
	case unbuilt:
		t.unbuilt++
		s.taken--
		return
	case killed:
		t.killed++
		who = " by " + by.path
	default:
		t.survivors = append(t.survivors, m)
	}
	fmt.Printf("%s %s:%d %s => %s (%.0f s%s)\n", o, m.file, m.line, m.was, m.is, took.Seconds(), who)
}

func (s *session) fail(err error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	s.err = err
}

// report prints the survivors, as they would stand in equivalents.txt, and the sums
// by package. It returns how many of a hundred were killed.
func (s *session) report(took time.Duration) float64 {
	var names []string
	for p := range s.tally {
		names = append(names, p)
	}
	slices.Sort(names)
	var all tally
	fmt.Print("\nsurvivors\n")
	for _, p := range names {
		t := s.tally[p]
		slices.SortFunc(t.survivors, func(a, b *mutant) int { return strings.Compare(a.key(), b.key()) })
		for _, m := range t.survivors {
			fmt.Println(m.key())
		}
		all.killed, all.equivalent, all.unbuilt = all.killed+t.killed, all.equivalent+t.equivalent, all.unbuilt+t.unbuilt
		all.survivors = append(all.survivors, t.survivors...)
	}
	fmt.Printf("\n%-24s %8s %8s %10s %10s %8s\n", "package", "killed", "survived", "of hundred", "equivalent", "unbuilt")
	for _, p := range names {
		s.tally[p].print(p)
	}
	rate := all.print("all")
	if tested := all.killed + len(all.survivors); tested > 0 {
		fmt.Printf("%.0f s, %.1f s a mutant, seed as given, %d places in all\n", took.Seconds(), took.Seconds()/float64(tested), len(s.sample))
	}
	return rate
}

func (t *tally) print(name string) float64 {
	rate := 100.0
	if n := t.killed + len(t.survivors); n > 0 {
		rate = 100 * float64(t.killed) / float64(n)
	}
	fmt.Printf("%-24s %8d %8d %10.1f %10d %8d\n", name, t.killed, len(t.survivors), rate, t.equivalent, t.unbuilt)
	return rate
}
