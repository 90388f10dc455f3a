package schema

import (
	"slices"
	"strings"
	"testing"
)

// What keepers write and what it means: general usage, from glossaries of keepers'
// societies (abbreviations such as MM, DKS, EWL) and otherwise from memory. "?" is what
// is asked back, since it means different things to different people or animals.
const usage = `
moult: molted, shed, sloughed, popped a molt, exo found, exuvia found, skin found, new skin
matured: hooked out, MM, ultimate, matured
premoult: premolt, in pre, fat and dull, dark bald spot, off food + sealed
sealed: webbed in, webbed up, plugged, sealed, bulldozed shut, buried itself, walled in
hanging: on its back, hanging, upside down
paired: paired, introduced, breeding loan
mated: inserted, connected, spermatophore found
gravid: gravid?, heavy, plump, huge
laid: sacked, double-clutched, ooth, clutch, laid
sac-taken: sac pulled
born: had babies, scorplings, slings on mom, white on back, gave birth
dispersed: off mom, scattered, wandering
separated: pulled, split, cupped, deli'd, potted
fed: ate, took, pounced, munched, downed, fed, crix, killed in seconds
refused: refused, ignored, ran from it, no interest, NE, didn't take, left, fasting
seen: seen, saw
moved: shipped, sold, traded, 50/50, loan
died: DOA, RIP, passed, dead
ill: DKS, death curl, threw up, regurgitated
quarantined: QT, iso
mites: mites
escaped: escaped
remark: kicked hairs, flicked, bald, EWL, eggs with legs, prelarva, 1st instar in sac, springs, CUC, brumating, cooled
not-gravid: not gravid, not-gravid, not_gravid
?: PM, threw, dropped, popped, gone, lost, MIA, i2, 2i, 2nd instar, FH, L2, flipped, out, sac, springs?, tiny white bugs, rehoused, upgraded, KK, kritty, kritter keeper, tub, cup, deli, pen, penult, PM male
`

func TestSpelled(t *testing.T) {
	for line := range strings.Lines(strings.TrimSpace(usage)) {
		want, texts, _ := strings.Cut(strings.TrimSpace(line), ": ")
		for _, text := range strings.Split(texts, ", ") {
			for _, text := range []string{text, strings.ToUpper(text), strings.ToLower(text)} {
				words := strings.Fields(text + " 3")
				s, n := Spelled(words)
				got := "nothing"
				if s != nil {
					if got = "?"; !s.Asked() {
						got = s.Word.Name
					}
				}
				if got != want || n != len(words)-1 {
					t.Errorf("%q is %s, in %d words; want %s", text, got, n, want)
				}
			}
		}
	}
}

// Every word is spelled as it is named, and what is asked back leaves a choice.
func TestSpellings(t *testing.T) {
	for _, w := range LogWords {
		if s, n := Spelled([]string{w.Name}); s == nil || s.Word != w || n != 1 {
			t.Errorf("%s is not spelled by its name", w.Name)
		}
	}
	for i := range Spellings {
		if s := &Spellings[i]; s.Asked() != (len(s.May) > 0) || s.Asked() && (len(s.May) < 2 || s.Hint == "") {
			t.Errorf("%s: a word, or a choice and what to choose by", s.Text)
		}
	}
	if slices.Contains(WordPaired.Also(), "mated") || slices.Contains(WordMated.Also(), "paired") {
		t.Error("a pair that was brought together has not been seen to mate")
	}
	if s, n := Spelled([]string{"threw", "it"}); s == nil || !s.Asked() || n != 1 {
		t.Error("threw is asked back, and threw up is not")
	}
}
