package main

import (
	"fmt"
	"maps"
	"path/filepath"
	"runtime/debug"
	"slices"
	"strings"

	"vivary/cmd/internal/publish"
	"vivary/schema/wording"
)

// writeManual writes the pages of the manual, made of the table of commands.
func writeManual(w *world, f *flags, args []string) int {
	if len(args) != 1 {
		fmt.Fprintln(w.err, "vivary man: name the folder into which the pages go")
		return usage
	}
	now, err := w.moment(f, nil)
	if err != nil {
		fmt.Fprintf(w.err, "vivary man: %v\n", wording.Plain(err))
		return usage
	}
	v := versionForm{}
	if info, ok := debug.ReadBuildInfo(); ok {
		v.read(info)
	}
	m := manual{now.Format("2006-01-02"), strings.TrimSpace("vivary " + v.Module)}
	pages := map[string]string{"vivary.1": m.whole()}
	for i := range commands {
		pages["vivary-"+commands[i].name+".1"] = m.of(&commands[i])
	}
	if err := w.disk.MkdirAll(args[0], 0o755); err != nil {
		fmt.Fprintf(w.err, "vivary man: %v\n", wording.Plain(err))
		return refused
	}
	for _, name := range slices.Sorted(maps.Keys(pages)) {
		path := filepath.Join(args[0], name)
		if err := publish.Replace(w.disk, path, []byte(pages[name]), ourManual); err != nil {
			fmt.Fprintf(w.err, "vivary man: %v. The pages before it are written.\n", wording.Plain(err))
			return refused
		}
		fmt.Fprintln(w.out, filepath.ToSlash(path))
	}
	return fine
}

// byUs begins every page, so that one of somebody else is never written over.
const byUs = ".\\\" Written by vivary man from its table of commands.\n"

func ourManual(text []byte) bool { return strings.HasPrefix(string(text), byUs) }

// manual is what stands at the foot of each page.
type manual struct{ day, version string }

func (m manual) head(name, short string) string {
	return byUs + fmt.Sprintf(".TH %s 1 %q %q vivary\n.nh\n.ad l\n.SH NAME\n%s \\- %s\n", roff(strings.ToUpper(name)), m.day, m.version, roff(name), roff(short))
}

// of is the page of a command.
func (m manual) of(c *command) string {
	var b strings.Builder
	b.WriteString(m.head("vivary-"+c.name, c.short))
	fmt.Fprintf(&b, ".SH SYNOPSIS\n\\fBvivary %s\\fR %s\n.SH DESCRIPTION\n%s", roff(c.name), roff(strings.TrimSpace("[FLAGS] "+c.args)), paragraph(c.long))
	b.WriteString(".SH OPTIONS\nFlags stand anywhere in the line.\nWhat stands after \\fB\\-\\-\\fR is taken as it is.\n")
	for _, f := range flagTable {
		if c.has(f.name) {
			fmt.Fprintf(&b, ".TP\n\\fB\\-\\-%s\\fR %s\n%s", roff(f.name), roff(f.value), paragraph(upper(f.doc)))
		}
	}
	fmt.Fprintf(&b, ".SH EXAMPLES\n.EX\n%s\n.EE\n.SH SEE ALSO\n\\fBvivary\\fR(1)\n", roff(c.try))
	return b.String()
}

// whole is the page of the program.
func (m manual) whole() string {
	var b strings.Builder
	b.WriteString(m.head("vivary", "check care plans for animals and make calendars of them"))
	b.WriteString(".SH SYNOPSIS\n\\fBvivary\\fR COMMAND [FLAGS] [WORDS]\n.SH DESCRIPTION\n" + paragraph("A collection is a folder of plans, files that end in .care.hcl, and logs, that end in .care.log. Commands are typed in it, or name it.") + ".SH COMMANDS\n")
	for i := range commands {
		fmt.Fprintf(&b, ".TP\n\\fBvivary\\-%s\\fR(1)\n%s", roff(commands[i].name), paragraph(upper(commands[i].short)))
	}
	b.WriteString(".SH EXIT STATUS\n")
	for _, s := range [][2]string{{"0", "All is well."}, {"1", "Findings refuse the plan, or something could not be written."}, {"2", "The command was not understood."}, {"3", "Something is urgent, where that was asked for."}} {
		fmt.Fprintf(&b, ".TP\n%s\n%s", s[0], paragraph(s[1]))
	}
	b.WriteString(".SH EXAMPLES\n.EX\n" + roff("vivary start spare-room\nvivary build spare-room") + "\n.EE\n.SH SEE ALSO\n")
	var all []string
	for i := range commands {
		all = append(all, "\\fBvivary\\-"+roff(commands[i].name)+"\\fR(1)")
	}
	return b.String() + strings.Join(all, ",\n") + "\n"
}

func upper(s string) string { return strings.ToUpper(s[:1]) + s[1:] + "." }

// paragraph is a text as a page has it: a sentence a line, so that the gap between two is the
// reader's.
func paragraph(s string) string { return roff(strings.ReplaceAll(s, ". ", ".\n")) + "\n" }

// roff is a text in which nothing is an instruction to the formatter (groff(7)).
func roff(s string) string {
	var b strings.Builder
	for line := range strings.Lines(s) {
		if strings.HasPrefix(line, ".") || strings.HasPrefix(line, "'") {
			b.WriteString(`\&`)
		}
		for _, r := range line {
			switch {
			case r == '\\':
				b.WriteString(`\e`)
			case r == '-':
				b.WriteString(`\-`)
			case r == '\'':
				b.WriteString(`\(aq`)
			case r > '~':
				fmt.Fprintf(&b, `\[u%04X]`, r)
			default:
				b.WriteRune(r)
			}
		}
	}
	return b.String()
}
