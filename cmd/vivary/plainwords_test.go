package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"
)

// Whatever an error of the system says in its own words is said in a keeper's: no command
// prints an error that has not gone through wording.Plain.
func TestErrorsInPlainWords(t *testing.T) {
	files, err := filepath.Glob("*.go")
	if err != nil || len(files) < 20 {
		t.Fatal(len(files), err)
	}
	bare := regexp.MustCompile(`(?m)^.*Fprint(f|ln)?\(w\.(err|out), .*[,( ]err[,)].*$`)
	plain := regexp.MustCompile(`wording\.Plain\(err\)`)
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, line := range bare.FindAllString(string(text), -1) {
			if !plain.MatchString(line) {
				t.Errorf("%s: %s", file, line)
			}
		}
	}
}
