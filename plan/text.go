package plan

import (
	"errors"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"vivary/plan/finding"
	"vivary/plan/syntax"
	"vivary/schema"
	"vivary/schema/quantity"
	"vivary/schema/slip"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// text reads a plain text in quotes. Plan text is never computed, so a text with
// something to fill in is a finding.
func (d *decoder) text(x *syntax.Value, attr *schema.Attr) (Written[string], bool) {
	none := Written[string]{}
	if len(x.Text) > MaxText && utf8.RuneCountInString(x.Text) > MaxText {
		d.found.Add(finding.Finding{Rule: ruleTooLarge, At: x.At,
			Text: attr.Name + " has more than " + strconv.Itoa(MaxText) + " characters", Write: "a shorter text"})
		return none, false
	}
	switch x.Kind {
	case syntax.Text:
	case syntax.List:
		d.bad(x, attr, attr.Name+" is one value, not a list")
		return none, false
	case syntax.Number:
		if attr.Dimension == 0 {
			d.bad(x, attr, attr.Name+" is a text in quotes")
			return none, false
		}
		_, err := quantity.ParseRange(x.Text, attr.Dimension)
		d.refuse(wrote(x.Text, x.At), attr, err)
		return none, false
	default:
		d.bad(x, attr, attr.Name+" has no quotes around its value")
		return none, false
	}
	switch {
	case x.Filled:
		d.bad(x, attr, "a text cannot hold ${…} or %{…}: a plan computes nothing")
	case strings.ContainsFunc(x.Text, hidden):
		d.bad(x, attr, attr.Name+" holds a character that cannot be seen")
	case seen(attr) && strings.TrimSpace(x.Text) == "":
		// It harms nobody: what stands in its place is known.
		d.found.Soft(finding.Finding{Rule: ruleValue, At: x.At, Text: attr.Name + " is blank, and counts as not written",
			Write: attr.Form() + "; or leave it out"}, finding.Caution)
	default:
		return wrote(x.Text, x.At), true
	}
	return none, false
}

// seen reports whether people read the text in lists, where a blank one would be a gap.
func seen(attr *schema.Attr) bool {
	return attr.Kind == schema.Text && (attr.Name == "title" || attr.Name == "task")
}

// hidden reports whether a character has no place in a text that people read: one
// that steers a terminal. Ends of lines are let through, and marks that turn the
// direction of writing, which Hebrew or Arabic among other words needs.
func hidden(r rune) bool { return unicode.IsControl(r) && !strings.ContainsRune("\t\n\r", r) }

func (d *decoder) words(x *syntax.Value, attr *schema.Attr, to *Written[[]string]) {
	s, ok := d.text(x, attr)
	if !ok {
		return
	}
	var out []string
	for _, w := range listed(s) {
		out = append(out, d.choice(attr, w).V)
	}
	*to = wrote(out, s.At)
}

// listed returns the words of a text, which commas part, each at its own place.
// Where something in the text is written as an escape, it is that of the whole.
func listed(s Written[string]) []Written[string] {
	var out []Written[string]
	plain := int(s.At.End-s.At.Start) == len(s.V)+2
	from := s.At.Start + 1
	for _, part := range strings.Split(s.V, ",") {
		word := strings.TrimSpace(part)
		at := s.At
		if plain {
			at.Start = from + int32(strings.Index(part, word))
			at.End = at.Start + int32(len(word))
		}
		out = append(out, wrote(word, at))
		from += int32(len(part)) + 1
	}
	return out
}

// meant checks a text, and returns what is understood by it.
func (d *decoder) meant(attr *schema.Attr, s Written[string]) Written[string] {
	switch attr.Kind {
	case schema.Word:
		return d.choice(attr, s)
	case schema.Zone:
		d.zone(attr, s)
	case schema.Link:
		if !validLink(s.V) {
			d.found.Add(finding.Finding{Rule: ruleValue, At: s.At, Text: attr.Name + " is a web address that begins with https://", Write: attr.Form()})
		}
	}
	if attr.Ref == schema.NamesKind {
		s.V = kindCalled(s.V)
	}
	return s
}

// kindCalled is the name of the kind of care that is called so, or the name as it is.
func kindCalled(name string) string {
	if k := schema.KindCalled(name); k != nil {
		return k.Name
	}
	return name
}

// zone finds a name that is no time zone, and one that is and means no place: whoever lives
// where clocks change is an hour off with it for half of the year. None of them is ever
// taken for another; only capitals, blanks and a region that was left out are put right.
func (d *decoder) zone(attr *schema.Attr, s Written[string]) {
	_, err := zone.Load(s.V)
	var unknown *zone.UnknownError
	if errors.As(err, &unknown) {
		f := finding.Finding{Rule: ruleZone, At: s.At, Text: err.Error(), Write: "the zone of your place, " + suchAs(unknown.Offered)}
		if unknown.Is != "" {
			f.Write, f.Edits = quote(unknown.Is), finding.Instead(s.At, s.V, unknown.Is)
		}
		d.found.Add(f)
		return
	}
	o := zone.NoPlace(s.V)
	if err != nil || o == nil {
		return
	}
	severity := finding.Advice
	f := finding.Finding{Rule: ruleZone, At: s.At, Text: quote(s.V) + " is no place's: " + o.Says, Write: "the zone of your place, " + suchAs(o.Zones)}
	if o.Fixed {
		severity = finding.Caution
		f.Text += ". As a time zone it never changes"
	}
	d.found.Soft(f, severity)
}

// suchAs lists names of which one may be meant, or another.
func suchAs(names []string) string {
	if len(names) == 0 {
		return "region and city as the IANA database has them"
	}
	return "such as " + wording.Or(quotedEach(names))
}

func validLink(s string) bool {
	if !strings.HasPrefix(s, "https://") && !strings.HasPrefix(s, "http://") {
		return false
	}
	for i := 0; i < len(s); i++ {
		if s[i] <= ' ' || s[i] >= 0x7f || strings.IndexByte(`"<>\^{|}`+"`", s[i]) >= 0 {
			return false
		}
	}
	return true
}

// choice reads one of the words of an attribute, also by another name that keepers have
// for it.
func (d *decoder) choice(attr *schema.Attr, s Written[string]) Written[string] {
	if name := schema.Called(attr.Choices, s.V); name != "" {
		s.V = name
		return s
	}
	known := choiceNames(attr.Choices)
	f := finding.Finding{Rule: ruleUnknownWord, At: s.At, Text: attr.Name + " cannot be " + quote(s.V),
		Write: "one of: " + strings.Join(known, ", ")}
	if q := schema.AskedBack(attr.Unclear, s.V); q != nil {
		f.Text += ": " + q.Ask
		f.Write = q.Write
	} else if n := slip.Of(s.V, known); n != "" {
		f.Text += ": did you mean " + quote(n) + "?"
		f.Write = attr.Name + " = " + quote(n)
		f.Edits = finding.Instead(s.At, s.V, n)
	}
	d.found.Add(f)
	return s
}
