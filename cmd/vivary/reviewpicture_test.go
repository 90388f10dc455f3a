package main

import (
	"html"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

var (
	bold    = regexp.MustCompile(`\*\*(.+?)\*\*`)
	code    = regexp.MustCompile("`([^`]+)`")
	escapes = regexp.MustCompile(`\\([^\w\s])`)
)

// shownAs is the part of Markdown that a comparison has, as a page.
func shownAs(markdown string) string {
	open, _, _ := strings.Cut(markdown, "\n<details>")
	var out strings.Builder
	out.WriteString(`<!doctype html><meta charset="utf-8"><style>body{font:15px/1.45 "DejaVu Sans",sans-serif;width:900px;margin:24px;color:#1d2320}h3{font-size:17px}h4{margin:18px 0 6px}ul{margin:2px 0;padding-left:22px}code{background:#eef1ec;padding:1px 4px;border-radius:4px}</style>`)
	depth := 0
	to := func(n int) {
		for ; depth < n; depth++ {
			out.WriteString("<ul>")
		}
		for ; depth > n; depth-- {
			out.WriteString("</ul>")
		}
	}
	for line := range strings.Lines(open) {
		text := strings.TrimSpace(line)
		words := html.UnescapeString(strings.TrimLeft(text, "-# "))
		words = escapes.ReplaceAllString(code.ReplaceAllString(bold.ReplaceAllString(html.EscapeString(words), "<b>$1</b>"), "<code>$1</code>"), "$1")
		switch {
		case text == "":
		case strings.HasPrefix(text, "####"):
			to(0)
			out.WriteString("<h4>" + words + "</h4>")
		case strings.HasPrefix(text, "###"):
			out.WriteString("<h3>" + words + "</h3>")
		case strings.HasPrefix(line, "  - "):
			to(2)
			out.WriteString("<li>" + words + "</li>")
		case strings.HasPrefix(line, "- "):
			to(1)
			out.WriteString("<li>" + words + "</li>")
		default:
			out.WriteString("<p>" + words + "</p>")
		}
	}
	to(0)
	return out.String()
}

// drawComment writes a picture of a comparison as a comment shows it.
func drawComment(t *testing.T, markdown, file string) {
	t.Helper()
	page := filepath.Join(t.TempDir(), "page.html")
	if err := os.WriteFile(page, []byte(shownAs(markdown)), 0o644); err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
		"--user-data-dir="+t.TempDir(), "--hide-scrollbars", "--window-size=960,1390", "--screenshot="+file, "file://"+page).CombinedOutput()
	if err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
}
