package main

import (
	"bytes"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

// TestEditors: in Neovim and Emacs somebody opens a plan with a mistake, has it mended, gives an
// enclosure another name, and saves. What is on the disk then is a sound plan, with what was
// asked for and nothing else changed.
func TestEditors(t *testing.T) {
	program := filepath.Join(t.TempDir(), "vivary")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v: %s", err, out)
	}
	here, err := os.Getwd()
	if err != nil {
		t.Fatal(err)
	}
	scripts := filepath.Join(here, "../../testdata/editors")
	for name, command := range map[string][]string{
		"nvim":  {"--headless", "-u", "NONE", "-i", "NONE", "-c", "luafile " + filepath.Join(scripts, "neovim.lua")},
		"emacs": {"-q", "--batch", "-l", filepath.Join(scripts, "emacs.el")},
	} {
		t.Run(name, func(t *testing.T) {
			editor, err := exec.LookPath(name)
			if err != nil {
				t.Fatalf("%s is not installed: run testdata/oracles/setup", name)
			}
			house := filepath.Join(t.TempDir(), "house")
			if err := os.CopyFS(house, os.DirFS("../../examples/quillmoor")); err != nil {
				t.Fatal(err)
			}
			file := filepath.Join(house, "enclosures/burrow-a.care.hcl")
			sound, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(file, bytes.Replace(sound, []byte("every"), []byte("evry"), 1), 0o644); err != nil {
				t.Fatal(err)
			}
			run := exec.Command(editor, command...)
			run.Dir = house
			run.Env = append(os.Environ(), "VIVARY="+program, "PLAN="+file, "HOUSE="+house+"/", "HOME="+t.TempDir(), "TERM=dumb")
			run.WaitDelay = time.Second
			stop := time.AfterFunc(2*time.Minute, func() { _ = run.Process.Kill() })
			defer stop.Stop()
			if out, err := run.CombinedOutput(); err != nil {
				t.Fatalf("%v: %s", err, out)
			}
			got, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			want := strings.Replace(string(sound), "enclosure \"burrow-a\" {\n  title   = \"Burrow A\"\n", "enclosure \"burrow-one\" {\n  title = \"Burrow A\"\n  formerly = \"burrow-a\"\n", 1)
			if strings.Join(strings.Fields(string(got)), " ") != strings.Join(strings.Fields(want), " ") {
				t.Errorf("the file is\n%s", got)
			}
			if out, err := exec.Command(program, "check", house, "--now", "2026-11-25T18:00").CombinedOutput(); err != nil {
				t.Errorf("%v: %s", err, out)
			}
		})
	}
}
