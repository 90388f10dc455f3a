package plan

import (
	"strings"
	"testing"
	"unicode/utf16"

	"vivary/plan/finding"
)

func inUTF16(s string, big bool) string {
	var b strings.Builder
	for _, u := range append([]uint16{0xfeff}, utf16.Encode([]rune(s))...) {
		if big {
			b.Write([]byte{byte(u >> 8), byte(u)})
		} else {
			b.Write([]byte{byte(u), byte(u >> 8)})
		}
	}
	return b.String()
}

// A file in which nothing can be read is found with its place; one that an editor has only
// saved in another way is read.
func TestUnusualTexts(t *testing.T) {
	const log = "2026-11-02 keeper k away \"ill\"\n"
	keeper := sound + "keeper \"k\" {\n}\n"
	cr := func(s string) string { return strings.ReplaceAll(s, "\n", "\r") }
	for say, c := range map[string]struct {
		plan, log string
		rule      string // that finds something in x, "" for none
		severity  finding.Severity
		line, col int
	}{
		"as usual":              {keeper, log, "", 0, 0, 0},
		"line ends of Windows":  {strings.ReplaceAll(keeper, "\n", "\r\n"), strings.ReplaceAll(log, "\n", "\r\n"), "", 0, 0, 0},
		"a mark at the start":   {"\ufeff" + keeper, "\ufeff" + log, "", 0, 0, 0},
		"only comments":         {"# nothing yet\n", log, "", 0, 0, 0},
		"no end of line":        {strings.TrimSpace(keeper), strings.TrimSpace(log), "", 0, 0, 0},
		"a return at the end":   {keeper + "\r", log, "line-ends", finding.Error, 10, 1},
		"empty":                 {"", log, "blank-file", finding.Error, 1, 1},
		"blanks":                {" \t\r\n\n  ", log, "blank-file", finding.Error, 1, 1},
		"only a mark":           {"\ufeff", log, "blank-file", finding.Error, 1, 1},
		"a mark in a log":       {keeper, "\ufeff", "blank-file", finding.Caution, 1, 1},
		"blanks in a log":       {keeper, "\n \n", "blank-file", finding.Caution, 1, 1},
		"old line ends":         {cr(keeper), log, "line-ends", finding.Error, 1, 17},
		"one old line end":      {strings.Replace(keeper, "\n\n", "\n# c\rkeeper\n", 1), log, "line-ends", finding.Error, 4, 4},
		"old line ends in logs": {keeper, cr("# c\n" + log), "line-ends", finding.Advice, 1, 4},
		"UTF-16":                {inUTF16(keeper, false), log, "not-text", finding.Error, 1, 1},
		"UTF-16, other end":     {inUTF16(keeper, true), log, "not-text", finding.Error, 1, 1},
		"UTF-16 in a log":       {keeper, inUTF16(log, false), "not-text", finding.Error, 1, 1},
		"zeros":                 {strings.Repeat("\x00", 4096), log, "not-text", finding.Error, 1, 1},
		"zeros in a log":        {keeper, strings.Repeat("\x00", 4096), "log-line", finding.Urgent, 1, 1},
		"Latin-1":               {strings.Replace(keeper, "\"k\"", "\"k\xfc\"", 1), log, "not-text", finding.Error, 1, 1},
	} {
		x := map[string]string{"x.care.hcl": c.plan, "x.care.log": c.log}
		if len(c.plan) < len(keeper)/2 || c.rule == "not-text" && c.log == log { // the rest stands elsewhere
			x["y.care.hcl"] = keeper
		}
		got, found := load(t, x)
		if c.rule == "" && len(found) > 0 || c.rule != "" && (len(found) != 1 || found[0].Rule.ID != c.rule || found[0].Severity != c.severity) {
			t.Errorf("%s: %v", say, texts(found))
			continue
		}
		if c.severity == finding.Advice && len(got.Log) != 1 || c.rule == "" && len(got.Log) != 1 {
			t.Errorf("%s: %d lines of the log", say, len(got.Log))
		}
		if c.rule == "" {
			continue
		}
		if at := got.Files.Start(found[0].At); at.Line != c.line || at.Column != c.col || !strings.HasPrefix(at.File, "c/x.care.") {
			t.Errorf("%s: said at %+v, want %d:%d", say, at, c.line, c.col)
		}
	}
}
