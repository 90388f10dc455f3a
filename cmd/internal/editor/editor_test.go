package editor

import (
	"context"
	"encoding/json"
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/spf13/afero"

	"vivary/cmd/internal/protocol"
)

var wednesday = time.Date(2026, 11, 25, 18, 0, 0, 0, time.UTC)

// quillmoor is a session in the example, with some files open.
func quillmoor(t *testing.T, open ...string) *client {
	t.Helper()
	from, to := afero.NewBasePathFs(afero.NewOsFs(), "../../../examples/quillmoor"), afero.NewMemMapFs()
	for _, pattern := range []string{"*.care.*", "*/*.care.*"} {
		names, err := afero.Glob(from, pattern)
		if err != nil || len(names) == 0 {
			t.Fatal(pattern, err)
		}
		for _, name := range names {
			text, err := afero.ReadFile(from, name)
			if err != nil {
				t.Fatal(err)
			}
			if err := afero.WriteFile(to, "/c/"+name, text, 0o644); err != nil {
				t.Fatal(err)
			}
		}
	}
	c := meet(t, to, capable, wednesday)
	for _, name := range open {
		c.open(name)
	}
	c.settled()
	return c
}

const burrow = "enclosures/burrow-a.care.hcl"

// at is the place of a mark in a file, behind so many bytes of it.
func (c *client) at(name, mark string, behind int) protocol.TextDocumentPositionParams {
	c.t.Helper()
	i := strings.Index(c.texts[name], mark)
	if i < 0 {
		c.t.Fatalf("%s has no %q", name, mark)
	}
	return protocol.TextDocumentPositionParams{TextDocument: protocol.TextDocumentIdentifier{URI: uri(name)}, Position: protocol.NewLines([]byte(c.texts[name]), protocol.UTF16).Position(i + behind)}
}

// write writes something else for a mark.
func (c *client) write(name, mark, text string) {
	c.t.Helper()
	i := strings.Index(c.texts[name], mark)
	if i < 0 {
		c.t.Fatalf("%s has no %q", name, mark)
	}
	c.edit(name, i, i+len(mark), text)
}

// apply makes a change as an editor does: in the texts that are open, and on the disk.
func (c *client) apply(e *protocol.WorkspaceEdit) {
	c.t.Helper()
	for _, x := range e.DocumentChanges {
		text, _ := json.Marshal(x)
		var d protocol.TextDocumentEdit
		if err := json.Unmarshal(text, &d); err != nil {
			c.t.Fatal(err)
		}
		if len(d.Edits) == 0 {
			continue // a file that is made
		}
		name := strings.TrimPrefix(d.TextDocument.URI, "file:///c/")
		old, open := c.texts[name]
		if !open {
			disk, _ := afero.ReadFile(c.disk, "/c/"+name)
			old = string(disk)
		}
		if open && (d.TextDocument.Version == nil || *d.TextDocument.Version != c.versions[name]) {
			c.t.Errorf("%s is changed as it was at another version", name)
		}
		slices.SortFunc(d.Edits, func(a, b protocol.TextEdit) int {
			if n := b.Range.Start.Line - a.Range.Start.Line; n != 0 {
				return n
			}
			return b.Range.Start.Character - a.Range.Start.Character
		})
		for _, e := range d.Edits {
			l := protocol.NewLines([]byte(old), protocol.UTF16)
			start, end := l.Offset(e.Range.Start), l.Offset(e.Range.End)
			if open {
				c.edit(name, start, end, e.NewText)
			}
			old = old[:start] + e.NewText + old[end:]
		}
		if !open {
			if err := afero.WriteFile(c.disk, "/c/"+name, []byte(old), 0o644); err != nil {
				c.t.Fatal(err)
			}
			c.tell("workspace/didChangeWatchedFiles", map[string]any{"changes": []any{}})
		}
	}
}

// waitFor waits until a rule is shown in a file, or is not.
func (c *client) waitFor(name, rule string, there bool) {
	c.t.Helper()
	for begun := time.Now(); slices.Contains(c.found(name), rule) != there; time.Sleep(5 * time.Millisecond) {
		if time.Since(begun) > 20*time.Second {
			c.t.Fatalf("%s shows %v; %s should be there: %v", name, c.found(name), rule, there)
		}
	}
}

// TestMistake: a mistake is shown while it is typed, an action mends it, and nothing is shown
// any more.
func TestMistake(t *testing.T) {
	c := quillmoor(t, burrow)
	before := c.found(burrow)
	c.write(burrow, "every", "evry")
	c.waitFor(burrow, "unknown-word", true)
	var all []protocol.CodeAction
	p := c.at(burrow, "evry", 2)
	c.call("textDocument/codeAction", protocol.CodeActionParams{TextDocument: p.TextDocument, Range: protocol.Range{Start: p.Position, End: p.Position}}, &all)
	i := slices.IndexFunc(all, func(a protocol.CodeAction) bool { return strings.Contains(a.Title, "every") })
	if i < 0 || !all[i].IsPreferred || all[i].Kind != protocol.ActionQuickFix || all[i].Diagnostics[0].Code != "unknown-word" {
		t.Fatalf("%+v", all)
	}
	c.apply(all[i].Edit)
	c.waitFor(burrow, "unknown-word", false)
	if got := c.found(burrow); fmt.Sprint(got) != fmt.Sprint(before) {
		t.Errorf("%v is shown, before %v", got, before)
	}
}

// TestElsewhere: what is changed in one file is found in others, also in those that are not
// open; and so it goes again.
func TestElsewhere(t *testing.T) {
	c := quillmoor(t, "collection.care.hcl")
	at := strings.Index(c.texts["collection.care.hcl"], "round \"")
	if at < 0 {
		t.Fatal("no round")
	}
	end := at + strings.Index(c.texts["collection.care.hcl"][at+7:], "\"") + 7
	name := c.texts["collection.care.hcl"][at+7 : end]
	c.edit("collection.care.hcl", at+7, end, "somewhen")
	shows := func() (files []string) {
		c.mu.Lock()
		defer c.mu.Unlock()
		for at, p := range c.shown {
			if slices.ContainsFunc(p.Diagnostics, func(d protocol.Diagnostic) bool { return d.Code == "unknown-name" && strings.Contains(d.Message, name) }) {
				files = append(files, at)
			}
		}
		return files
	}
	for begun := time.Now(); len(shows()) == 0; time.Sleep(5 * time.Millisecond) {
		if time.Since(begun) > 20*time.Second {
			t.Fatal("nothing is found elsewhere")
		}
	}
	c.edit("collection.care.hcl", at+7, at+7+len("somewhen"), name)
	for begun := time.Now(); len(shows()) > 0; time.Sleep(5 * time.Millisecond) {
		if time.Since(begun) > 20*time.Second {
			t.Fatalf("%v show it still", shows())
		}
	}
}

// TestRename: an enclosure with another name keeps the one that it had first, is called so
// everywhere in the plan, and nothing is found that was not there before: not in the log either.
func TestRename(t *testing.T) {
	for _, file := range []string{burrow, "collection.care.hcl"} {
		c := quillmoor(t, file)
		was := c.everything()
		renamed := 0
		for _, kind := range []string{"enclosure", "keeper", "round", "calendar", "care", "room", "animals"} {
			i := strings.Index(c.texts[file], kind+" \"")
			if i < 0 || i > 0 && c.texts[file][i-1] != '\n' && c.texts[file][i-1] != ' ' {
				continue
			}
			p := c.at(file, c.texts[file][i:i+len(kind)+3], len(kind)+3)
			var can *protocol.PrepareRenameResult
			c.call("textDocument/prepareRename", p, &can)
			if can == nil {
				t.Errorf("%s cannot have another name", kind)
				continue
			}
			var e *protocol.WorkspaceEdit
			c.call("textDocument/rename", protocol.RenameParams{TextDocument: p.TextDocument, Position: p.Position, NewName: "another-" + kind}, &e)
			c.apply(e)
			c.settled()
			renamed++
			now := c.everything()
			for at, rules := range now {
				if fmt.Sprint(rules) != fmt.Sprint(was[at]) {
					t.Errorf("%s %s: %s shows %v, before %v", kind, can.Placeholder, at, rules, was[at])
				}
			}
			if kind != "room" && !strings.Contains(c.texts[file], fmt.Sprintf("formerly = %q", can.Placeholder)) {
				t.Errorf("%s %s does not say what it was called", kind, can.Placeholder)
			}
		}
		if renamed == 0 {
			t.Errorf("nothing in %s was renamed", file)
		}
		c.end()
	}
}

// everything are the rules of what is found in all files.
func (c *client) everything() map[string][]string {
	c.settled()
	out := map[string][]string{}
	h := c.server.everywhere()[0]
	r := h.settled(context.Background()).result
	for path, all := range c.server.textsOf(r).diagnostics(r) {
		for _, d := range all {
			out[path] = append(out[path], d.Code)
		}
	}
	return out
}

// TestNames: from a name one goes to where it is given, and finds all places at which it stands.
func TestNames(t *testing.T) {
	c := quillmoor(t, burrow, "rooms.care.hcl")
	i := strings.Index(c.texts[burrow], "room")
	p := c.at(burrow, c.texts[burrow][i:i+strings.IndexByte(c.texts[burrow][i:], '\n')], strings.IndexByte(c.texts[burrow][i:], '"')+2)
	var to []protocol.Location
	c.call("textDocument/definition", p, &to)
	if len(to) != 1 || to[0].URI != uri("rooms.care.hcl") {
		t.Fatalf("%+v", to)
	}
	var with, without []protocol.Location
	c.call("textDocument/references", protocol.ReferenceParams{TextDocument: p.TextDocument, Position: p.Position, Context: protocol.ReferenceContext{IncludeDeclaration: true}}, &with)
	c.call("textDocument/references", protocol.ReferenceParams{TextDocument: p.TextDocument, Position: p.Position}, &without)
	if len(with) != len(without)+1 || len(without) < 2 {
		t.Errorf("%d places, %d without where it is given", len(with), len(without))
	}
	var marks []protocol.DocumentHighlight
	c.call("textDocument/documentHighlight", p, &marks)
	if len(marks) == 0 {
		t.Error("no mark in the file itself")
	}
}

// TestOutline: the blocks of a file with what is in them, and what can be folded.
func TestOutline(t *testing.T) {
	c := quillmoor(t, burrow)
	var all []protocol.DocumentSymbol
	c.call("textDocument/documentSymbol", protocol.DocumentParams{TextDocument: protocol.TextDocumentIdentifier{URI: uri(burrow)}}, &all)
	if len(all) != 1 || all[0].Name != "burrow-a" || len(all[0].Children) < 4 {
		t.Errorf("%+v", all)
	}
	var folds []protocol.FoldingRange
	c.call("textDocument/foldingRange", protocol.DocumentParams{TextDocument: protocol.TextDocumentIdentifier{URI: uri(burrow)}}, &folds)
	if len(folds) < 5 || folds[0].StartLine != 0 {
		t.Errorf("%+v", folds)
	}
}

// TestHonestEnd: whoever says that it ends is let go without an error; one that goes without a
// word is an error.
func TestHonestEnd(t *testing.T) {
	c := quillmoor(t)
	var nothing json.RawMessage
	c.call("shutdown", nil, &nothing)
	c.tell("exit", nil)
	if err := <-c.ended; err != nil {
		t.Error(err)
	}
	c = quillmoor(t)
	_ = c.rpc.Close()
	if err := <-c.ended; err == nil {
		t.Error("an editor that goes without a word is none that ended")
	}
}

// TestOldEditor: an editor that can do nothing is spoken with all the same.
func TestOldEditor(t *testing.T) {
	disk := afero.NewMemMapFs()
	if err := afero.WriteFile(disk, "/c/a.care.hcl", []byte("keeper \"one\" {\n  titel = \"One\"\n}\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	c := meet(t, disk, `{}`, wednesday)
	c.open("a.care.hcl")
	c.waitFor("a.care.hcl", "unknown-word", true)
	var flat []protocol.SymbolInformation
	c.call("textDocument/documentSymbol", protocol.DocumentParams{TextDocument: protocol.TextDocumentIdentifier{URI: uri("a.care.hcl")}}, &flat)
	if len(flat) != 1 || flat[0].Name != "one" {
		t.Errorf("%+v", flat)
	}
	if len(c.asked) > 0 {
		t.Errorf("it was asked for %v", c.asked)
	}
}

// TestOthersWrite: what others write on the disk is found in an editor that tells of nothing.
func TestOthersWrite(t *testing.T) {
	disk := afero.NewMemMapFs()
	for name, text := range map[string]string{"a": "keeper \"one\" {\n}\n", "b": "keeper \"two\" {\n}\n"} {
		if err := afero.WriteFile(disk, "/c/"+name+".care.hcl", []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	c := meet(t, disk, `{}`, wednesday)
	c.open("a.care.hcl")
	c.settled()
	if err := afero.WriteFile(disk, "/c/b.care.hcl", []byte("keeper \"two\" {\n  titel = \"Two\"\n}\n"), 0o644); err != nil {
		t.Fatal(err)
	}
	c.waitFor("b.care.hcl", "unknown-word", true)
}

// TestAccept: a finding that may be silenced is accepted until a day, for a reason that is still
// to be written; and a species of which no sheet is known gets one of the keeper's own.
func TestAccept(t *testing.T) {
	c := quillmoor(t, burrow)
	c.write(burrow, `depth     = "16 cm"`, `depth     = "6 cm"`)
	c.settled()
	var all []protocol.CodeAction
	whole := protocol.Range{End: protocol.Position{Line: 999}}
	ask := func(word string) *protocol.CodeAction {
		t.Helper()
		c.call("textDocument/codeAction", protocol.CodeActionParams{TextDocument: protocol.TextDocumentIdentifier{URI: uri(burrow)}, Range: whole, Context: protocol.CodeActionContext{Only: []string{"refactor"}}}, &all)
		for i := range all {
			if strings.Contains(all[i].Title, word) {
				return &all[i]
			}
		}
		t.Fatalf("nothing to %s in %+v", word, all)
		return nil
	}
	a := ask("Accept substrate-shallow until 2026-12-25")
	c.apply(a.Edit)
	if !strings.Contains(c.texts[burrow], "  accept \"substrate-shallow\" {\n    because = \"\"\n    until   = \"2026-12-25\"\n  }\n") {
		t.Errorf("%s", c.texts[burrow])
	}
	c.write(burrow, `because = ""`, `because = "a deeper tank is ordered"`)
	c.settled()
	for begun := time.Now(); slices.Contains(c.found(burrow), "substrate-shallow"); time.Sleep(5 * time.Millisecond) {
		if time.Since(begun) > 10*time.Second {
			t.Fatal("it is found still")
		}
	}
	c.write(burrow, `species = "pandinus-imperator"`, `species = "pandinus-gregoryi"`)
	c.settled()
	a = ask("Write a sheet of your own for pandinus-gregoryi")
	text, _ := json.Marshal(a.Edit)
	if !strings.Contains(string(text), `file:///c/sheets/pandinus-gregoryi.care.hcl`) || !strings.Contains(string(text), "species \\\"pandinus-gregoryi") {
		t.Errorf("%s", text)
	}
}

// TestOffers: a block that is offered within another is laid out as it stands there, in an
// editor that sees to the lines behind the first and in one that does not; without tab stops
// where the editor knows none.
func TestOffers(t *testing.T) {
	for capabilities, want := range map[string]string{
		capable: "care \"${1:mist}\" {\n    $0\n  }",
		`{}`:    "care \"mist\" {\n    \n  }",
		`{"textDocument": {"completion": {"completionItem": {"snippetSupport": true, "insertTextModeSupport": {"valueSet": [1, 2]}}}}}`: "care \"${1:mist}\" {\n  $0\n}",
	} {
		disk := afero.NewMemMapFs()
		if err := afero.WriteFile(disk, "/c/a.care.hcl", []byte("enclosure \"box\" {\n  ca\n}\n"), 0o644); err != nil {
			t.Fatal(err)
		}
		c := meet(t, disk, capabilities, wednesday)
		c.open("a.care.hcl")
		var list protocol.CompletionList
		c.call("textDocument/completion", c.at("a.care.hcl", "  ca", 4), &list)
		i := slices.IndexFunc(list.Items, func(x protocol.CompletionItem) bool { return x.Label == "care" })
		if i < 0 || list.Items[i].TextEdit.Range.Start.Character != 2 || list.Items[i].Documentation == nil {
			t.Fatalf("%+v", list)
		}
		if got := list.Items[i].TextEdit.NewText; got != want {
			t.Errorf("%s puts in %q, want %q", capabilities, got, want)
		}
	}
}
