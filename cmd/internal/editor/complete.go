package editor

import (
	"context"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"vivary/cmd/internal/protocol"
	"vivary/compile/assist"
)

// page is a file as it is typed now, with what was compiled last; nil where there is none.
func (s *Server) page(ctx context.Context, uri string) (*assist.Page, *protocol.Lines) {
	path := pathOf(uri)
	h := s.house(path)
	if h == nil {
		return nil, nil
	}
	now, d := h.latest(ctx, path)
	if now == nil {
		return nil, nil
	}
	return &assist.Page{Name: filepath.ToSlash(path), Text: d.text, Result: now.result}, protocol.NewLines(d.text, s.encoding)
}

// completion is what may stand at a place. It is made from the text as it is typed, and does not
// wait until that is compiled.
func (s *Server) completion(ctx context.Context, p *protocol.TextDocumentPositionParams) (protocol.CompletionList, error) {
	out := protocol.CompletionList{Items: []protocol.CompletionItem{}}
	page, l := s.page(ctx, p.TextDocument.URI)
	if page == nil {
		return out, nil
	}
	at := l.Offset(p.Position)
	all, indent := page.Complete(at), page.Indent(at)
	out.IsIncomplete = len(all) >= assist.Most
	for i := range all {
		out.Items = append(out.Items, s.item(l, &all[i], i, indent))
	}
	return out, nil
}

// item is an offer as a list shows it. indent stands before the line into which it is put: where
// the editor does not put it before the other lines of the offer too, we do.
func (s *Server) item(l *protocol.Lines, o *assist.Offer, place int, indent string) protocol.CompletionItem {
	x := protocol.CompletionItem{
		Label: o.Label, Detail: o.Detail, Kind: offered[o.Kind], SortText: fmt.Sprintf("%04d", place), FilterText: o.Filter,
		InsertTextFormat: protocol.InsertPlain, TextEdit: &protocol.TextEdit{Range: l.Range(o.Edit.Start, o.Edit.End), NewText: o.Edit.Text},
	}
	if o.Doc != "" {
		x.Documentation = &protocol.MarkupContent{Kind: "markdown", Value: o.Doc}
	}
	switch {
	case o.Snippet && s.client.TextDocument.Completion.CompletionItem.SnippetSupport:
		x.InsertTextFormat = protocol.InsertSnippet
	case o.Snippet:
		x.TextEdit.NewText = o.Plain
	}
	if strings.Contains(x.TextEdit.NewText, "\n") {
		x.InsertTextMode = protocol.IndentAdjusted
		if modes := s.client.TextDocument.Completion.CompletionItem.InsertTextModeSupport.ValueSet; !slices.Contains(modes, protocol.IndentAdjusted) {
			x.InsertTextMode, x.TextEdit.NewText = 0, strings.ReplaceAll(x.TextEdit.NewText, "\n", "\n"+indent)
		}
	}
	return x
}

// offered are what editors draw beside offers.
var offered = [...]int{
	assist.KindBlock: protocol.CompletionStruct, assist.KindAttribute: protocol.CompletionProperty, assist.KindChoice: protocol.CompletionConstant,
	assist.KindName: protocol.CompletionReference, assist.KindKnown: protocol.CompletionClass, assist.KindValue: protocol.CompletionValue,
	assist.KindUnit: protocol.CompletionUnit, assist.KindLogWord: protocol.CompletionKeyword,
}

// hover is what a word means. As what may stand at a place, it waits for nothing.
func (s *Server) hover(ctx context.Context, p *protocol.TextDocumentPositionParams) (*protocol.Hover, error) {
	page, l := s.page(ctx, p.TextDocument.URI)
	if page == nil {
		return nil, nil
	}
	start, end, text := page.Hover(l.Offset(p.Position))
	if text == "" {
		return nil, nil
	}
	at := l.Range(start, end)
	return &protocol.Hover{Contents: protocol.MarkupContent{Kind: "markdown", Value: text}, Range: &at}, nil
}
