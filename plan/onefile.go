package plan

import (
	"path/filepath"
	"regexp"
	"strings"

	"golang.org/x/text/cases"
	"golang.org/x/text/unicode/norm"

	"vivary/plan/finding"
	"vivary/plan/source"
)

// A plan is written on one machine, looked at on another and served from a third. Windows and
// macOS take names for one that Linux tells apart, and Windows has names that no file can
// have. That is found on every system alike, or it would be found where it is too late.

// folded is the same for names that are one file under Windows or macOS, which tell neither
// capital letters from small ones nor how an accented letter is put together.
func folded(name string) string {
	for i := range len(name) {
		if name[i] >= 0x80 {
			return norm.NFC.String(cases.Fold().String(norm.NFC.String(name)))
		}
	}
	return strings.ToLower(name)
}

// devices are what Windows takes for a device, with any ending behind it.
var devices = regexp.MustCompile(`(?i)^(con|prn|aux|nul|clock\$|conin\$|conout\$|com[0-9¹²³]|lpt[0-9¹²³]) *(\.|$)`)

// barred says why a file cannot have a name under Windows, or "".
func barred(name string) string {
	if strings.ContainsRune("acnlpACNLP", rune(name[0])) && devices.MatchString(name) {
		return "Windows takes for a device, whatever its ending"
	}
	for _, r := range name {
		if r < ' ' || strings.ContainsRune(`<>:"\|?*`, r) {
			return "has " + shownRune(r) + " in it, which no file of Windows can have in its name"
		}
	}
	if last := name[len(name)-1]; last == '.' || last == ' ' {
		return "ends in a dot or a blank, which Windows takes off"
	}
	return ""
}

func shownRune(r rune) string {
	if r < ' ' {
		return "an invisible character"
	}
	return string(r)
}

// portable finds files that cannot be read, or are one, under another system.
func (w *walker) portable(root string) {
	first := map[string]string{}
	for _, path := range w.paths {
		rel, err := filepath.Rel(root, path)
		if err != nil {
			continue
		}
		rel = filepath.ToSlash(rel)
		for part := range strings.SplitSeq(rel, "/") {
			if why := barred(part); why != "" {
				w.say(path, finding.Caution, finding.Finding{Rule: ruleElsewhere, Text: quote(part) + " " + why, Write: "another name for the file or the folder"})
				break
			}
		}
		key := folded(rel)
		if o, twice := first[key]; twice {
			w.say(path, finding.Caution, finding.Finding{Rule: ruleElsewhere, Text: quote(rel) + " and " + quote(o) + " are one file under Windows and macOS, where only one of them is kept", Write: "another name for one of the two"})
			continue
		}
		first[key] = rel
	}
}

// namesElsewhere finds names that are one under another system, or that no file can have there.
// That of a calendar is that of its file: it refuses, since calendars would be written over
// one another; others are looked for by name in logs and lists.
func (r *resolver) namesElsewhere() {
	c := r.c
	if c.About != nil {
		r.named("collection", namesOf([]*About{c.About}), finding.Caution)
	}
	r.named("room", namesOf(c.Rooms), finding.Caution)
	r.named("keeper", namesOf(c.Keepers), finding.Caution)
	r.named("round", namesOf(c.Rounds), finding.Caution)
	r.named("rota", namesOf(c.Rotas), finding.Caution)
	r.named("calendar", namesOf(c.Calendars), finding.Error)
	r.named("enclosure", append(namesOf(c.Enclosures), namesOf(c.Racks)...), finding.Caution)
}

// named looks at the names of one kind.
func (r *resolver) named(what string, all []Written[string], how finding.Severity) {
	first := make(map[string]Written[string], len(all))
	said := map[source.Place]bool{}
	for _, w := range all {
		if why := barred(w.V); why != "" && !said[w.At] {
			said[w.At] = true
			r.found.Add(finding.Finding{Rule: ruleElsewhere, Severity: how, At: w.At, Text: "the name " + quote(w.V) + ": it " + why, Write: "another name, with more behind it"})
		}
		key := folded(w.V)
		if o, twice := first[key]; !twice {
			first[key] = w
		} else if o.V != w.V && !said[w.At] {
			said[w.At] = true
			r.found.Add(finding.Finding{Rule: ruleElsewhere, Severity: how, At: w.At, Text: what + " " + quote(w.V) + " and " + what + " " + quote(o.V) + " differ in capital letters only: under Windows and macOS they are one name",
				Write: "another name for one of them, and its name of now as formerly", Also: []finding.Related{{At: o.At, Text: "the other"}}})
		}
	}
}

// namesOf are the names of blocks.
func namesOf[T interface{ head() *Head }](all []T) []Written[string] {
	out := make([]Written[string], 0, len(all))
	for _, b := range all {
		if h := b.head(); h.Name.V != "" {
			out = append(out, h.Name)
		}
	}
	return out
}
