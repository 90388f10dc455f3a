package main

import (
	"embed"
	"fmt"
	"slices"
	"strings"

	"vivary/schema/wording"
)

// scripts tell shells whom to ask for what may stand at a place of a command line: the hidden
// command, which knows the table of commands and reads the collection.
//
//go:embed completion/*
var scripts embed.FS

// shells are the files of the scripts, by the names under which each shell looks for them.
var shells = [][2]string{{"bash", "vivary.bash"}, {"zsh", "_vivary"}, {"fish", "vivary.fish"}}

// completion prints the script by which a shell completes command lines.
func completion(w *world, _ *flags, args []string) int {
	var known []string
	for _, s := range shells {
		known = append(known, s[0])
		if len(args) == 1 && args[0] == s[0] {
			text, _ := scripts.ReadFile("completion/" + s[1])
			fmt.Fprint(w.out, string(text))
			return fine
		}
	}
	fmt.Fprintf(w.err, "vivary completion: name your shell: %s\n", wording.Or(known))
	return usage
}

// hidden is the word that a script writes in the place of a command, before the words that
// were typed.
const hidden = "__complete"

// offer is what may stand at a place, and what that is.
type offer struct{ name, about string }

// What is found on the disk the shell offers itself.
var (
	folders = []offer{{name: ":folders"}}
	files   = []offer{{name: ":files"}}
)

// complete prints what may stand in the place of the last word of a command line, a line
// each: the word, a tab, what it is. Whatever is wrong, with the line or with the plan, there
// is less to offer and nothing to say.
func complete(w *world, words []string) int {
	words = unsplit(words)
	last := words[len(words)-1]
	a := &typing{w: w, before: words[:len(words)-1], word: last}
	a.line, _ = parse(a.before)
	begin, all := a.offers()
	for _, o := range all {
		there := begin != "" && slices.Contains(strings.Split(begin, ","), o.name)
		switch {
		case o.name == "" || there:
		case o.name[0] == ':':
			fmt.Fprintln(w.out, o.name)
		case strings.HasPrefix(begin+o.name, last):
			fmt.Fprintf(w.out, "%s\t%s\n", begin+wording.Line(o.name), wording.Line(o.about))
		}
	}
	return fine
}

// unsplit undoes what bash does, which takes "--in=home" for three words.
func unsplit(words []string) []string {
	var out []string
	for _, word := range words {
		if n := len(out); word == "=" && n > 0 && isFlag(out[n-1]) {
			continue
		}
		out = append(out, word)
	}
	if len(out) == 0 || words[len(words)-1] == "=" {
		out = append(out, "")
	}
	return out
}

// offers returns what may stand in the place of the word, behind what of it stands already.
func (a *typing) offers() (begin string, all []offer) {
	word := a.word
	plain := !slices.Contains(a.before, "--")
	if f := a.valued(); plain && f >= 0 && !isFlag(word) {
		return "", a.values(f)
	}
	name, value, set := strings.Cut(word, "=")
	switch {
	case plain && set && isFlag(name):
		if all = a.values(flagOf(name[2:])); len(all) > 0 && all[0].name[0] == ':' {
			return "", all
		}
		return word[:len(word)-len(value)], all
	case plain && strings.HasPrefix(word, "-"):
		return "", a.flags()
	case a.line.word == "":
		return "", theCommands()
	case a.line.command == nil:
		return "", nil
	}
	if a.line.command.many { // of a list with commas the last is typed
		begin = word[:strings.LastIndexByte(word, ',')+1]
	}
	return begin, a.args()
}

// valued is the flag whose value comes next, or -1.
func (a *typing) valued() int {
	if n := len(a.before); n > 0 && isFlag(a.before[n-1]) {
		if f := flagOf(a.before[n-1][2:]); f >= 0 && flagTable[f].value != "" {
			return f
		}
	}
	return -1
}

// flags are those that the command takes and that do not stand there yet.
func (a *typing) flags() (all []offer) {
	for _, f := range flagTable {
		there := slices.ContainsFunc(a.before, func(word string) bool { return word == "--"+f.name || strings.HasPrefix(word, "--"+f.name+"=") })
		if c := a.line.command; !there && (c == nil || c.has(f.name)) {
			all = append(all, offer{"--" + f.name, f.doc})
		}
	}
	return append(all, offer{"--help", "say what the command does"})
}

// theCommands are the commands.
func theCommands() (all []offer) {
	for i := range commands {
		all = append(all, offer{commands[i].name, commands[i].short})
	}
	return all
}
