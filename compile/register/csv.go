package register

import (
	"encoding/csv"
	"io"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"vivary/schema/civil"
	"vivary/schema/wording"
)

// columns are those of the CSV, in order, and what stands in them. Another is put at the end.
var columns = []struct {
	name string
	of   func(*Register, *Row) string
}{
	{"id", func(_ *Register, x *Row) string { return x.ID }},
	{"title", func(_ *Register, x *Row) string { return x.Group.Animals.Shown() }},
	{"species", func(_ *Register, x *Row) string { return x.Species() }},
	{"species_as_written", func(_ *Register, x *Row) string { return x.Written() }},
	{"listing", func(_ *Register, x *Row) string { return x.Listing }},
	{"males", func(_ *Register, x *Row) string { return strconv.Itoa(x.Count.Males) }},
	{"females", func(_ *Register, x *Row) string { return strconv.Itoa(x.Count.Females) }},
	{"unsexed", func(_ *Register, x *Row) string { return strconv.Itoa(x.Count.Unsexed) }},
	{"total", func(_ *Register, x *Row) string { return strconv.Itoa(x.Count.Total()) }},
	{"stage", func(_ *Register, x *Row) string { return x.Stage }},
	{"origin", func(_ *Register, x *Row) string { return x.Origin }},
	{"paper", func(_ *Register, x *Row) string { return x.Paper }},
	{"born", func(_ *Register, x *Row) string { return written(x.Born) }},
	{"arrived", func(_ *Register, x *Row) string { return written(x.Came) }},
	{"from", func(_ *Register, x *Row) string { return x.From }},
	{"mother", func(_ *Register, x *Row) string { return x.Dam }},
	{"brood", func(_ *Register, x *Row) string { return x.Brood }},
	{"parted_from", func(_ *Register, x *Row) string { return x.Parted }},
	{"enclosure", func(_ *Register, x *Row) string { return x.Place.Name.V }},
	{"moves", func(_ *Register, x *Row) string { return x.told(Move) }},
	{"treatments", func(_ *Register, x *Row) string { return x.told(Health) }},
	{"matings", func(_ *Register, x *Row) string { return x.told(Mating) }},
	{"numbers", func(_ *Register, x *Row) string { return x.told(Number) }},
	{"out", func(_ *Register, x *Row) string { return written(x.Out) }},
	{"reason", func(_ *Register, x *Row) string { return x.Reason }},
	{"to", func(_ *Register, x *Row) string { return x.To }},
	{"not_written", func(_ *Register, x *Row) string { return strings.Join(x.Blank, "; ") }},
	{"note", func(_ *Register, x *Row) string { return x.Note }},
	{"lines", func(r *Register, x *Row) string { return strings.Join(r.Lines(x), " ") }},
	{"species_on_paper", func(_ *Register, x *Row) string { return x.OnPaper }},
	{"list_checked", func(_ *Register, x *Row) string { return written(x.Checked) }},
	{"keep_until", func(_ *Register, x *Row) string { return written(x.Kept) }},
}

func written(on civil.Date) string { return strings.TrimSuffix(day(on), " ") }

// CSV writes the rows by RFC 4180, in UTF-8, below a line with the names of the columns.
func (r *Register) CSV(w io.Writer) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	cells := make([]string, len(columns))
	for i, c := range columns {
		cells[i] = c.name
	}
	_ = out.Write(cells) // Error has it
	for _, x := range r.Rows {
		for i, c := range columns {
			cells[i] = cell(c.of(r, x))
		}
		_ = out.Write(cells)
	}
	out.Flush()
	return out.Error()
}

// formulas begin what a spreadsheet takes for something to be reckoned, also in the letters of
// East Asia. An apostrophe says that it is text; so one stands before an apostrophe too, and
// whoever reads a cell takes the first one off.
var formulas = []rune{'=', '+', '-', '@', '\t', '\r', '\n', '＝', '＋', '－', '＠', '\''}

// cell is a text as it stands in a cell: one line of characters that are seen, which no
// spreadsheet runs.
func cell(s string) string {
	s = wording.Line(s)
	if first, _ := utf8.DecodeRuneInString(strings.TrimLeft(s, " ")); slices.Contains(formulas, first) {
		return "'" + s
	}
	return s
}
