package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"time"
)

// killer is a package whose tests are put to a mutant.
type killer struct {
	path string        // below the module's root
	only string        // the tests that are run, all where it is empty
	took time.Duration // with nothing changed, to build and to run
}

// patience is how long a mutant may take, from what is usual. What goes on for
// longer hangs, and that is seen.
func (k *killer) patience() time.Duration { return 20*time.Second + 4*k.took }

// memory in KiB that a test may reserve: a mutant that grows without end must not
// take the machine with it.
const memory = 12 << 20

type outcome int

const (
	survived outcome = iota
	killed
	unbuilt // it is no program
)

func (o outcome) String() string { return [...]string{"survived", "killed", "unbuilt"}[o] }

// test runs the tests of a killer, with an overlay if one is given.
func (k *killer) test(overlay string) (outcome, []byte) {
	args := []string{"-c", fmt.Sprintf(`ulimit -v %d; exec "$@"`, memory), "bash",
		"go", "test", "-short", "-count=1", "-failfast", "-vet=off", "-pgo=off", "-timeout", k.patience().String()}
	if overlay != "" {
		args = append(args, "-overlay", overlay)
	}
	if k.only != "" {
		args = append(args, "-run", k.only)
	}
	out, err := exec.Command("bash", append(args, "./"+k.path)...).CombinedOutput()
	switch {
	case err == nil:
		return survived, out
	case bytes.Contains(out, []byte("[build failed]")) || bytes.Contains(out, []byte("[setup failed]")):
		return unbuilt, out
	}
	return killed, out
}

// kill puts a mutant to the killers, one after another until one finds it. The
// mutant is seen by the compiler only: the tree stays as it is.
func kill(m *mutant, killers []*killer, dir string) (outcome, *killer, error) {
	source, err := os.ReadFile(m.file)
	if err != nil {
		return 0, nil, err
	}
	changed := filepath.Join(dir, "mutant.go")
	if err := os.WriteFile(changed, m.mutate(source), 0o600); err != nil {
		return 0, nil, err
	}
	original, err := filepath.Abs(m.file)
	if err != nil {
		return 0, nil, err
	}
	overlay, err := json.Marshal(map[string]map[string]string{"Replace": {original: changed}})
	if err != nil {
		return 0, nil, err
	}
	listed := filepath.Join(dir, "overlay.json")
	if err := os.WriteFile(listed, overlay, 0o600); err != nil {
		return 0, nil, err
	}
	for _, k := range killers {
		if o, _ := k.test(listed); o != survived {
			return o, k, nil
		}
	}
	return survived, nil, nil
}

// readKillers reads which tests answer for a package: a line is the package and
// then its killers, each a package, or a package@tests.
func readKillers(path string) (map[string][]*killer, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	known := map[string]*killer{} // by how it is written, so that each is timed once
	out := map[string][]*killer{}
	for line := range strings.Lines(string(text)) {
		words := strings.Fields(line)
		if len(words) < 2 || words[0] == "#" {
			continue
		}
		for _, w := range words[1:] {
			if known[w] == nil {
				k := &killer{}
				k.path, k.only, _ = strings.Cut(w, "@")
				known[w] = k
			}
			out[words[0]] = append(out[words[0]], known[w])
		}
	}
	return out, nil
}

// readEquivalents reads the mutants that mean the same as the program, by key,
// each with its reason.
func readEquivalents(path string) (map[string]string, error) {
	text, err := os.ReadFile(path)
	if err != nil {
		return nil, err
	}
	out := map[string]string{}
	for line := range strings.Lines(string(text)) {
		if line = strings.TrimSpace(line); line == "" || line[0] == '#' {
			continue
		}
		i := strings.LastIndexByte(line, '\t')
		if i < 0 || strings.Count(line, "\t") != 3 {
			return nil, fmt.Errorf("%s: not file, function, change and reason with tabs between: %s", path, line)
		}
		out[line[:i]] = line[i+1:]
	}
	return out, nil
}
