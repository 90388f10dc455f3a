package main

import (
	"go/parser"
	"go/token"
	"slices"
	"testing"
)

const source = `package p

type T struct{ on bool }

func (t *T) f(a, b int) string {
	if a < b && !t.on {
		return "less"
	}
	if a == b {
		t.on = true
	}
	for range 3 {
		a++
	}
	return "n" + t.g(a-200)
}
`

// Every kind of change is made, each under a name that does not hang on line
// numbers, and texts are not subtracted.
func TestMutants(t *testing.T) {
	found, err := mutants("p/p.go", []byte(source))
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for i := range found {
		m := &found[i]
		if m.function != "T.f" {
			t.Errorf("%s stands in %s", m.was, m.function)
		}
		if _, err := parser.ParseFile(token.NewFileSet(), "", m.mutate([]byte(source)), 0); err != nil {
			t.Errorf("%s is not Go: %v", m.is, err)
		}
		got = append(got, m.was+" => "+m.is)
	}
	want := []string{
		`if a < b && !t.on { => if !(a < b && !t.on) {`,
		`if a < b && !t.on { => if a < b || !t.on {`,
		`if a < b && !t.on { => if a <= b && !t.on {`,
		`return "less" => `,
		`if a == b { => if a != b {`,
		`t.on = true => `,
		`t.on = true => t.on = false`,
		`for range 3 { => for range 4 {`,
		`for range 3 { => for range 2 {`,
		`a++ => `,
		`return "n" + t.g(a-200) => return "n" + t.g(a+200)`,
	}
	slices.Sort(got)
	slices.Sort(want)
	if !slices.Equal(got, want) {
		t.Errorf("got\n%q\nwant\n%q", got, want)
	}
}
