package plan

import (
	"strings"
	"testing"

	"vivary/plan/finding"
)

// Whatever a file is called, it is read, or found where it is nearly a plan or a log by its
// name. What stands in a name is what systems and editors are seen to make of one: the
// manuals of vim (swap-file), Emacs (backup and lock files), nano (backup), and the
// habits of file managers to add an ending or a number; common practice, no source.
func TestFileNames(t *testing.T) {
	const none = finding.Severity(99)
	for name, want := range map[string]struct {
		severity finding.Severity
		ask      string
	}{
		"X.CARE.HCL":              {finding.Error, "X.care.hcl"},
		"x.Care.hcl":              {finding.Error, "x.care.hcl"},
		"y.care.hcl.txt":          {finding.Error, "y.care.hcl"},
		"y.care.hcl.TXT":          {finding.Error, "y.care.hcl"},
		"y.care.hcl.rtf":          {finding.Error, "y.care.hcl"},
		"y.care.hcl (1)":          {finding.Error, "y.care.hcl"},
		"y.care (1).hcl":          {finding.Error, "y.care (1).care.hcl"},
		"y.care.hcl copy":         {finding.Error, "y.care.hcl"},
		"y.care.hcl ":             {finding.Error, "y.care.hcl"},
		"y.care.hcl.":             {finding.Error, "y.care.hcl"},
		"y.care.hcl\u200b":        {finding.Error, "y.care.hcl"},
		"y.care.\u200bhcl":        {finding.Error, "y.care.hcl"},
		"z.hcl":                   {finding.Error, "z.care.hcl"},
		"Z.HCL":                   {finding.Error, "z.care.hcl"},
		"z.hcl.txt":               {finding.Error, "z.care.hcl"},
		"b.care":                  {finding.Error, "b.care.hcl"},
		"b.care.txt":              {finding.Error, "b.care.hcl"},
		"carehcl":                 {finding.Error, "my-plan.care.hcl"},
		"c-care-hcl":              {finding.Error, "c.care.hcl"},
		"c_care.hcl":              {finding.Error, "c.care.hcl"},
		"c.carehcl":               {finding.Error, "c.care.hcl"},
		"Care.hcl":                {finding.Error, "my-plan.care.hcl"},
		"e.care.hc1":              {finding.Error, "e.care.hcl"},
		"e.care.hl":               {finding.Error, "e.care.hcl"},
		"e.care.hcll":             {finding.Error, "e.care.hcl"},
		"e.cere.hcl":              {finding.Error, "e.care.hcl"},
		"é.care.hc1":              {finding.Error, "é.care.hcl"},
		".care.hcl":               {finding.Error, "my-plan.care.hcl"},
		".burrow.care.hcl":        {finding.Error, "burrow.care.hcl"},
		".burrow.care.hcl.icloud": {finding.Error, "nothing: let the system load burrow.care.hcl"},
		"burrow.care.hcl.gpg":     {finding.Error, "burrow.care.hcl"},
		"d.care.log.txt":          {finding.Urgent, "d.care.log"},
		"D.CARE.LOG":              {finding.Urgent, "D.care.log"},
		".d.care.log":             {finding.Urgent, "d.care.log"},
		"d.care.lo":               {finding.Urgent, "d.care.log"},
		"d-care.log":              {finding.Urgent, "d.care.log"},
		"2026.log":                {finding.Advice, "2026.care.log"},
		"c.care.hcl.bak":          {finding.Caution, "c.care.hcl"}, // beside nothing
		"c.care.hcl~":             {finding.Caution, "c.care.hcl"},
		".c.care.hcl.swp":         {finding.Caution, "c.care.hcl"},
		"#c.care.hcl#":            {finding.Caution, "c.care.hcl"},
		"c.care.log.old":          {finding.Caution, "c.care.log"},
		".c.care.hcl.a8Zk2Q":      {finding.Caution, "c.care.hcl"},
		"a.care.hcl~":             {none, ""}, // beside a.care.hcl
		"a.care.hcl.~2~":          {none, ""},
		"a.care.hcl.bak":          {none, ""},
		"a.care.hcl.bak2":         {none, ""},
		"a.care.hcl.orig":         {none, ""},
		"a.care.hcl.save":         {none, ""},
		"a.care.hcl.tmp":          {none, ""},
		".a.care.hcl.swp":         {none, ""},
		".a.care.hcl.0.new":       {none, ""},
		".a.care.hcl.swo":         {none, ""},
		".a.care.hcl.kate-swp":    {none, ""},
		".a.care.hcl.x7Gw2q":      {none, ""},
		"#a.care.hcl#":            {none, ""},
		".#a.care.hcl":            {none, ""}, // a lock of Emacs
		".~lock.a.care.hcl#":      {none, ""},
		"._a.care.hcl":            {none, ""}, // a system's note on another system's disk
		"a.care.hcl.svg":          {none, ""}, // a picture, by the name that the program asks for
		"year.svg":                {none, ""},
		"evening.ics":             {none, ""},
		"notes.txt":               {none, ""},
		"README.md":               {none, ""},
		"care":                    {none, ""},
		"hcl":                     {none, ""},
		"log":                     {none, ""},
		"daycare.pdf":             {none, ""},
		"health-care.docx":        {none, ""},
		"catalogue":               {none, ""},
		"dialog.html":             {none, ""},
		".gitignore":              {none, ""},
		"é":                       {none, ""},
		"\u0130\u0130.html":       {none, ""}, // which is longer in small letters
		"b (conflict).care.hcl":   {none, ""}, // read like any other
		"log.care.hcl":            {none, ""},
		strings.Repeat("y", 200):  {none, ""},
	} {
		plain := "# nothing yet\n"
		if strings.HasSuffix(name, ".care.hcl") && name[0] != '.' {
			plain = "room \"b\" {\n  temperature = \"20 to 22 C\"\n}\n"
		}
		c, found := load(t, map[string]string{"a.care.hcl": sound, name: plain})
		if want.severity == none {
			if len(found) > 0 || (plain[0] == 'r') != (len(c.Rooms) == 2) {
				t.Errorf("%q: %v", name, texts(found))
			}
			continue
		}
		if len(found) != 1 || found[0].Rule != ruleNotRead || found[0].Severity != want.severity || !strings.HasSuffix(": "+found[0].Write, ": "+want.ask) {
			t.Errorf("%q: not %s, asking for %s: %+v", name, want.severity, want.ask, found)
			continue
		}
		if at := c.Files.Start(found[0].At); at.File != "c/"+name || at.Line != 1 {
			t.Errorf("%q: it is said at %+v", name, at)
		}
	}
}

// A name that is asked for is one that is read; where it is taken, it is not asked for.
func TestAskedNames(t *testing.T) {
	for _, name := range []string{"X.CARE.HCL", "y.care.hcl.txt", "carehcl", "a.hcl", "#.care.hc1", "....hcl", " .hcl", "\u200b.hcl", ".care", "x.care.log.txt"} {
		is, asked := likenessOf(name)
		if is < nearPlan {
			t.Errorf("%q is none", name)
		}
		if is, _ := likenessOf(asked); is != planFile && is != logFile {
			t.Errorf("%q: %q is asked for, and is not read", name, asked)
		}
	}
	_, found := load(t, map[string]string{"a.care.hcl": sound, "a.care.hcl.txt": sound})
	if len(found) != 1 || !strings.Contains(found[0].Write, `"a.care.hcl" is there already`) {
		t.Error(found)
	}
}
