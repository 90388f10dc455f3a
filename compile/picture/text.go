package picture

import (
	"fmt"

	"vivary/schema/wording"
)

const bold = `font-weight="bold"`

// text draws one line of text. Its font is whatever sans-serif the reader has.
func (p *page) text(x, y, size float64, anchor, s string, style ...string) {
	if s = wording.Printed(s); s == "" {
		return
	}
	attrs := []string{fmt.Sprintf(`font-size="%g"`, size), `text-anchor="` + anchor + `"`}
	p.draw.text(x, y, s, append(attrs, style...)...)
}
