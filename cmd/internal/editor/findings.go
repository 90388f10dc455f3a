package editor

import (
	"bytes"
	"encoding/json"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"vivary/cmd/internal/protocol"
	"vivary/compile"
	"vivary/plan/finding"
	"vivary/plan/source"
)

func itoa(n int) string { return strconv.Itoa(n) }

// shown is what the editor shows of a collection: the diagnostics of each file, as they were
// sent.
type shown map[string][]byte

// texts are the files of a result, for going between bytes and positions.
type texts struct {
	files    *source.Set
	encoding protocol.Encoding
	lines    map[source.ID]*protocol.Lines
	before   map[source.ID]*protocol.Lines // of the result before
}

func (s *Server) textsOf(r *compile.Result) *texts {
	return &texts{files: r.Plan.Files, encoding: s.encoding, lines: map[source.ID]*protocol.Lines{}}
}

func (t *texts) of(id source.ID) *protocol.Lines {
	l := t.lines[id]
	if l == nil {
		text := t.files.Text(id)
		if l = t.before[id]; l == nil || !same(l.Text, text) {
			l = protocol.NewLines(text, t.encoding)
		}
		t.lines[id] = l
	}
	return l
}

// same reports whether two texts are one: a text is never written into.
func same(a, b []byte) bool { return len(a) == len(b) && (len(a) == 0 || &a[0] == &b[0]) }

func (t *texts) at(p source.Place) protocol.Range {
	return t.of(p.File).Range(int(p.Start), int(p.End))
}

// show sends what was found: of each file of which that has changed, all of it. A file that
// was shown and in which nothing is found any more is shown empty.
func (h *house) show(now *state) {
	if now.result == nil {
		h.clear(nil)
		return
	}
	t := h.s.textsOf(now.result)
	t.before = h.lines
	found := t.diagnostics(now.result)
	h.lines = t.lines
	if h.shown == nil {
		h.shown = shown{}
	}
	for path, all := range found {
		p := protocol.PublishDiagnosticsParams{URI: uriOf(path), Diagnostics: all}
		if d := now.docs[path]; d != nil {
			p.URI, p.Version = d.uri, &d.version
		}
		h.send(path, p)
	}
	h.clear(found)
	h.refresh()
}

// send sends the diagnostics of a file, unless they are those that it has.
func (h *house) send(path string, p protocol.PublishDiagnosticsParams) {
	text, err := json.Marshal(p)
	if err != nil || bytes.Equal(h.shown[path], text) {
		return
	}
	h.shown[path] = text
	h.s.notify("textDocument/publishDiagnostics", json.RawMessage(text))
}

// clear takes away what is shown of files of which nothing is found.
func (h *house) clear(found map[string][]protocol.Diagnostic) {
	for path := range h.shown {
		if _, still := found[path]; !still {
			delete(h.shown, path)
			h.s.notify("textDocument/publishDiagnostics", protocol.PublishDiagnosticsParams{URI: h.uri(path), Diagnostics: []protocol.Diagnostic{}})
		}
	}
}

// uri names a file as the editor does where it is open.
func (h *house) uri(path string) string {
	h.mu.Lock()
	defer h.mu.Unlock()
	if d := h.docs[path]; d != nil {
		return d.uri
	}
	return uriOf(path)
}

// diagnostics are the findings of a result, by the path of the file.
func (t *texts) diagnostics(r *compile.Result) map[string][]protocol.Diagnostic {
	out := map[string][]protocol.Diagnostic{}
	for i := range r.Findings {
		f := &r.Findings[i]
		at := placeOf(r, f)
		if at.File <= 0 {
			continue
		}
		path := filepath.FromSlash(r.Plan.Files.Name(at.File))
		out[path] = append(out[path], t.diagnostic(r, f, at))
	}
	return out
}

// placeOf is where a finding is shown: where it is, else at the enclosure that it is about, else
// at the collection block or the first file there is.
func placeOf(r *compile.Result, f *finding.Finding) source.Place {
	switch {
	case f.At.File > 0:
		return f.At
	case f.In.Whole.File > 0:
		at := f.In.Whole
		at.End = at.Start
		return at
	case r.Plan.About != nil:
		return r.Plan.About.At
	}
	if ids := r.Plan.Files.Files(); len(ids) > 0 {
		return source.Place{File: ids[0]}
	}
	return source.Place{}
}

func (t *texts) diagnostic(r *compile.Result, f *finding.Finding, at source.Place) protocol.Diagnostic {
	d := protocol.Diagnostic{Range: t.at(at), Severity: severity(f.Severity), Code: f.Rule.ID, Source: "vivary", Message: said(r, f)}
	for _, a := range f.Also {
		if a.At.File > 0 {
			d.RelatedInformation = append(d.RelatedInformation, protocol.DiagnosticRelatedInformation{
				Location: protocol.Location{URI: uriOf(t.files.Name(a.At.File)), Range: t.at(a.At)}, Message: a.Text})
		}
	}
	return d
}

func severity(s finding.Severity) protocol.DiagnosticSeverity {
	switch s {
	case finding.Advice:
		return protocol.SeverityInformation
	case finding.Caution, finding.Urgent:
		return protocol.SeverityWarning
	}
	return protocol.SeverityError
}

// said is a finding in words: how bad, what, the limit and whose, what to write.
func said(r *compile.Result, f *finding.Finding) string {
	lines := []string{f.Severity.String() + ": " + f.Text}
	add := func(label, text string) {
		if text != "" {
			lines = append(lines, label+": "+text)
		}
	}
	add("in", f.Where)
	for _, a := range f.Also {
		if !a.At.Written() {
			add("also", a.Text)
		}
	}
	add("limit", f.Limit)
	add("source", f.Source)
	if fix := finding.Edited(r.Plan.Files, f.Edits); len(fix) > 0 {
		add("write", strings.Join(fix, "\n"))
	} else {
		add("fix", f.Write)
	}
	return strings.Join(slices.Compact(lines), "\n")
}
