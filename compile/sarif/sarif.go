// Package sarif tells what is found in a collection as a log of SARIF 2.1.0, the interchange
// format of OASIS, for systems in which changes are reviewed. It finds nothing, judges
// nothing and writes no bytes: the findings are those that are printed for people.
package sarif

import (
	"crypto/sha256"
	"encoding/hex"
	"path/filepath"
	"regexp"
	"strconv"

	"vivary/compile"
	"vivary/plan/finding"
	"vivary/plan/source"
	"vivary/schema/quantity"
	"vivary/schema/wording"
)

// Tool is what a log says of the program and of how it was run.
type Tool struct {
	Version string // of the program; "" for none
	// Folder is that of the collection, as it was named where the program was run. It is
	// told where it lies below: what lies elsewhere is the business of one machine.
	Folder string
}

// Of returns the log of a collection: these findings in their order, then those that its
// accept blocks silence. The same collection gives the same log.
func Of(r *compile.Result, found []finding.Finding, by Tool) *Log {
	w := &writer{files: r.Plan.Files, units: r.Plan.Units, at: map[*finding.Rule]int{}, said: map[string]int{}}
	for _, rule := range compile.Rules() {
		w.rule(rule)
	}
	results := make([]result, 0, len(found)+len(r.Accepted))
	for i := range found {
		results = append(results, w.result(&found[i]))
	}
	for i := range r.Accepted {
		results = append(results, w.accepted(&r.Accepted[i]))
	}
	driver := driver{Name: "vivary", Version: by.Version, Language: "en", Rules: w.rules}
	return &Log{schemaAddress, "2.1.0", []run{{tool{driver}, bases(by.Folder), "UTF-8", "unicodeCodePoints", results}}}
}

// The folders from which the addresses of files are told.
const (
	ofCollection = "COLLECTION"
	ofWorking    = "WORKINGFOLDER"
	ofBuiltIn    = "BUILTIN"
)

func bases(folder string) map[string]artifactLocation {
	described := func(text string) artifactLocation { return artifactLocation{Description: plainly(text)} }
	out := map[string]artifactLocation{ofCollection: described("The folder of the collection."), ofBuiltIn: described("The sheets that are built into vivary.")}
	if below := filepath.ToSlash(filepath.Clean(folder)); folder != "" && below != "." && filepath.IsLocal(folder) {
		out[ofCollection] = artifactLocation{address(below + "/"), ofWorking, out[ofCollection].Description}
		out[ofWorking] = described("The folder in which vivary was run.")
	}
	return out
}

// writer makes the parts of one log.
type writer struct {
	files *source.Set
	units quantity.Units // of the keeper
	rules []reporting
	at    map[*finding.Rule]int // place of a rule among them
	said  map[string]int        // how often the same was said already
}

// levels are the words of SARIF for how bad a finding is. It has three; the properties have
// ours.
var levels = [...]string{finding.Advice: "note", finding.Caution: "warning", finding.Urgent: "warning", finding.Error: "error", finding.Danger: "error"}

var silences = [...]string{finding.Never: "never", finding.ByReason: "with-reason", finding.OnlyCaution: "caution-with-reason"}

// rule returns the place of a rule, which is put down when it is first asked for.
func (w *writer) rule(r *finding.Rule) int {
	at, known := w.at[r]
	if !known {
		at = len(w.rules)
		w.at[r] = at
		prose := func(s string) string { return wording.Prose(s, w.units) }
		w.rules = append(w.rules, reporting{r.ID, plainly(prose(r.Title)), plainly(prose(r.Why)), help(prose(r.Instead), prose(r.Source), r.Silence.String()),
			configuration{levels[r.Severity]}, ruleProperties{r.Severity.String(), silences[r.Silence], prose(r.Now)}})
	}
	return at
}

// help is what a rule says to do, in the words of RULES.md and why, which are Markdown.
func help(instead, source, silence string) *message {
	return &message{text(instead + "\nSource: " + source + ".\n" + silence), text(instead + "\n\n**Source:** " + source + ".\n\n" + silence)}
}

func (w *writer) result(f *finding.Finding) result {
	out := result{Rule: f.Rule.ID, Index: w.rule(f.Rule), Level: levels[f.Severity], Message: *plainly(words(f)), Suppressions: []suppression{},
		Fingerprints: map[string]string{"enclosureAndText/v1": w.fingerprint(f)},
		More:         resultProperties{f.Severity.String(), f.Text, f.Where, f.Of, f.Limit, f.Source, f.Write}}
	if at := w.location(f.At, of(f)); at.Physical != nil || at.Logical != nil {
		out.Locations = []location{at}
	}
	for i, a := range f.Also {
		if a.At.Written() {
			at := w.location(a.At, nil)
			at.ID, at.Message = &i, plainly(a.Text)
			out.Related = append(out.Related, at)
		}
	}
	if x := w.fix(f); x != nil {
		out.Fixes = []fix{*x}
	}
	return out
}

func (w *writer) accepted(a *compile.Accepted) result {
	why := "until " + a.By.Until.V.Words()
	if a.By.Because.V != "" {
		why = a.By.Because.V + " (" + why + ")"
	}
	out := w.result(&a.Finding)
	out.Suppressions = []suppression{{"inSource", "accepted", why, w.location(a.By.At, nil)}}
	return out
}

// of are the enclosures that a finding is about.
func of(f *finding.Finding) []string {
	if len(f.Of) == 0 && f.In.Name != "" {
		return []string{f.In.Name}
	}
	return f.Of
}

// words are all that a finding says, for those who are shown nothing but its message.
func words(f *finding.Finding) string {
	out := f.Said()
	for _, a := range f.Also {
		if !a.At.Written() {
			out += "\nAlso: " + a.Text
		}
	}
	for _, line := range [][2]string{{"Limit: ", f.Limit}, {"Source: ", f.Source}, {"What to write: ", f.Write}} {
		if line[1] != "" {
			out += "\n" + line[0] + line[1]
		}
	}
	return out
}

var numbers = regexp.MustCompile(`\d+`)

// fingerprint tells a finding from others, wherever it stands in the files and however its
// numbers grow from day to day: by its rule, the enclosure if it is about one, what it says,
// and the how manieth it is of those that say the same.
func (w *writer) fingerprint(f *finding.Finding) string {
	key := f.Rule.ID + "\x00"
	if names := of(f); len(names) == 1 {
		key += names[0]
	}
	key += "\x00" + numbers.ReplaceAllString(f.Text, "#")
	w.said[key]++
	sum := sha256.Sum256([]byte(key + "\x00" + strconv.Itoa(w.said[key])))
	return hex.EncodeToString(sum[:16])
}
