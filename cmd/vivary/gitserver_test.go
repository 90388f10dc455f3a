package main

import (
	"encoding/json"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"go.yaml.in/yaml/v3"
)

// pushes is a push that the repository is to take, or to refuse with some words, after which
// it has what it had.
func (c *clone) pushes(about string, words []string, args ...string) {
	c.Helper()
	before := c.git("ls-remote", "origin")
	out, err := c.try("git", append([]string{"push", "-q"}, args...)...)
	moved := c.git("ls-remote", "origin") != before
	if words == nil && (err != nil || !moved) || words != nil && (err == nil || moved) {
		c.Errorf("%s: %v, and the repository has changed: %v\n%s", about, err, moved, out)
	}
	for _, w := range words {
		if !strings.Contains(out, w) {
			c.Errorf("%s: %q is not said:\n%s", about, w, out)
		}
	}
}

// A repository to which others push takes no plan that is refused, and all that was seen.
func TestPreReceive(t *testing.T) {
	first := twoKeepers(t)
	server := &clone{t, filepath.Join(t.TempDir(), "the plans.git"), first.env}
	first.git("init", "-q", "--bare", "--initial-branch=main", server.dir)
	server.hook("pre-receive", "pre-receive")
	c := first
	c.git("remote", "add", "origin", server.dir)
	c.pushes("the first push of a sound plan", nil, "origin", "main")
	sound := c.read(burrowA)
	words := []string{burrowA + ":", "heater-bare", "Nothing was taken: the plan in main is refused"}

	c.write(burrowA, bareHeater(sound))
	c.commit("no thermostat")
	c.pushes("a plan that is refused", words, "origin", "main")
	c.pushes("a new branch with it", []string{"the plan in other is refused"}, "origin", "main:other")
	c.git("branch", "good", "HEAD^")
	c.git("branch", "good-2", "HEAD^")
	c.pushes("a branch that is sound and one that is not", words, "origin", "good", "main")
	c.write(burrowA, sound)
	c.write("enclosures/größe & “kröte” 7.care.hcl", strings.ReplaceAll(strings.ReplaceAll(sound, "burrow-a", "kröte-7"), "Burrow A", "Kröte 7"))
	c.commit("with its thermostat, and one more")
	c.pushes("a plan that is put right", nil, "origin", "main", "good")
	c.pushes("a branch that goes", nil, "origin", ":good")
	c.git("tag", "v1")
	c.pushes("a tag", nil, "origin", "v1")
	c.git("tag", "v0", "main^")
	c.pushes("a tag of a plan that was refused", nil, "origin", "v0")

	hook := filepath.Join(server.dir, "hooks", "pre-receive")
	c.write(burrowA, bareHeater(sound))
	c.commit("no thermostat")
	if err := os.Chmod(hook, 0o644); err != nil { // it came before the hook did
		t.Fatal(err)
	}
	c.pushes("without a hook", nil, "origin", "main")
	if err := os.Chmod(hook, 0o755); err != nil {
		t.Fatal(err)
	}
	c.add("records/2026.care.log", "2026-11-24 burrow-b fed\n")
	c.commit("what was seen")
	c.pushes("what was seen, of a plan that is refused", nil, "origin", "main")
	seen := c.read("records/2026.care.log")
	c.write("records/2026.care.log", strings.Replace(seen, "2026-11-16 burrow-b fed\n", "", 1))
	c.commit("a line less")
	c.pushes("a log with a line less, of a plan that is refused", words, "origin", "main")
	c.git("reset", "-q", "--hard", "HEAD^")
	c.git("checkout", "-q", "-b", "relief")
	c.add("records/2026.care.log", "2026-11-24 burrow-a fed\n")
	c.commit("what was seen")
	c.pushes("what was seen, in a branch of its own", nil, "origin", "relief")

	poor := c.without("vivary")
	poor.add("records/2026.care.log", "2026-11-24 burrow-a done water\n")
	poor.commit("what was seen")
	poor.pushes("what was seen, without the program", nil, "origin", "relief")
	poor.add(burrowA, "\n# a word\n")
	poor.commit("a word")
	poor.pushes("a plan, without the program", []string{"the server has no program vivary", "git config vivary.program"}, "origin", "relief")

	server.git("config", "vivary.collection", "the animals")
	c.pushes("what is in no collection", nil, "origin", "relief")
}

// changeScript is what a file for a system that checks each change runs, in the shell that it names.
type changeScript struct{ file, shell, text string }

func changeScripts(t *testing.T) []changeScript {
	t.Helper()
	read := func(name string, into any) {
		text, err := os.ReadFile(filepath.Join(repository, "examples", "git", name))
		if err == nil {
			err = yaml.Unmarshal(text, into)
		}
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
	}
	var workflow struct {
		On   []string
		Jobs map[string]struct {
			Steps []struct {
				Uses, Run string
				With      map[string]any
			}
		}
	}
	var pipeline map[string]struct {
		Script    []string
		Variables map[string]string
		Artifacts struct{ Paths []string }
	}
	read("workflow.yml", &workflow)
	read("gitlab-ci.yml", &pipeline)
	var all []changeScript
	for _, step := range workflow.Jobs["check"].Steps {
		if step.Run != "" {
			all = append(all, changeScript{"workflow.yml", "bash", step.Run})
		}
	}
	all = append(all, changeScript{"gitlab-ci.yml", "sh", strings.Join(pipeline["check"].Script, "\n")})
	if steps := workflow.Jobs["check"].Steps; len(all) != 2 || len(workflow.On) != 2 || steps[0].With["fetch-depth"] != 0 || steps[len(steps)-1].With["path"] != "findings.sarif\nchange.md\n" ||
		pipeline["check"].Variables["GIT_DEPTH"] != "0" || strings.Join(pipeline["check"].Artifacts.Paths, " ") != "findings.sarif change.md" {
		t.Errorf("not what it is to be: %+v %+v", workflow, pipeline)
	}
	return all
}

// What a system for changes runs fails for a plan that is refused, passes a sound one, writes
// its findings either way, and says where the program is not there.
func TestChangesAreChecked(t *testing.T) {
	c := twoKeepers(t)
	sound := c.read(burrowA)
	c.git("checkout", "-q", "-b", "refused")
	c.write(burrowA, bareHeater(sound))
	c.commit("no thermostat")
	for _, x := range changeScripts(t) {
		for branch, want := range map[string]int{"main": 0, "refused": 1, "no program": 2} {
			who := *c
			from := branch
			if branch == "no program" {
				who, from = *c.without("vivary"), "main"
			}
			here := &clone{t, filepath.Join(t.TempDir(), "a build"), who.env}
			c.git("clone", "-q", "--branch", from, c.dir, here.dir)
			summary := filepath.Join(t.TempDir(), "summary.md")
			here.env = append(slices.Clone(here.env), "GITHUB_BASE_REF=main", "GITHUB_STEP_SUMMARY="+summary, "CI_MERGE_REQUEST_DIFF_BASE_SHA="+strings.TrimSpace(c.git("rev-parse", "main")))
			out, err := here.try(x.shell, "-e", "-c", x.text)
			got := 0
			if exit, ok := err.(*exec.ExitError); ok {
				got = exit.ExitCode()
			} else if err != nil {
				t.Fatal(err)
			}
			if got != want {
				t.Errorf("%s, %s: status %d, not %d\n%s", x.file, branch, got, want, out)
			}
			switch branch {
			case "no program":
				if !strings.Contains(out, "vivary is not on this machine") {
					t.Errorf("%s: %s", x.file, out)
				}
			default:
				if means := here.read("change.md"); strings.Contains(means, "**Harm for 1 enclosure") != (branch == "refused") || strings.Contains(means, "Nothing changes") != (branch == "main") {
					t.Errorf("%s, %s: what it means is %s", x.file, branch, means)
				}
				if log := here.read("findings.sarif"); !json.Valid([]byte(log)) || strings.Contains(log, `"ruleId": "heater-bare"`) != (branch == "refused") || strings.Contains(out, "heater-bare") != (branch == "refused") {
					t.Errorf("%s, %s: %s\n%.2000s", x.file, branch, out, log)
				}
			}
		}
	}
}
