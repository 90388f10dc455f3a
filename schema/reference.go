package schema

import (
	"fmt"
	"strings"
)

// Reference returns the reference page of the language, as Markdown. It is made
// from the same descriptions that decode a plan, so that it cannot be wrong.
func Reference() string {
	var b strings.Builder
	b.WriteString("# The language of care plans\n\nThis page is generated from the schema: `go test ./schema -run Reference -update`.\n\n")
	b.WriteString(Plan.Doc + " They are HCL native syntax: blocks, attributes, and comments after `#`. A plan computes nothing: values are plain.\n\n## Values\n\n| kind | written | |\n|---|---|---|\n")
	for k := Text; k <= Spans; k++ {
		i := kindInfo[k]
		fmt.Fprintf(&b, "| %s | `%s` | %s |\n", i.name, i.example, i.doc)
	}
	b.WriteString("\n## Blocks\n")
	seen := map[*Block]bool{}
	for _, block := range Plan.Blocks {
		reference(&b, block, "", seen)
	}
	b.WriteString("\n## Kinds of care\n\n| kind | also | in a round | satisfies | |\n|---|---|---|---|---|\n")
	for _, k := range CareKinds {
		need := ""
		if k.Needs != nil {
			need = k.Needs.Name
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s | %s |\n", k.Name, strings.Join(k.Also, ", "), k.Phrase, need, k.Doc)
	}
	b.WriteString("\n## Needs\n\n| need | |\n|---|---|\n")
	for _, n := range Needs {
		fmt.Fprintf(&b, "| `%s` | %s |\n", n.Name, n.Doc)
	}
	b.WriteString("\n## Figures of a species sheet\n\n| figure | kind | by stage | |\n|---|---|---|---|\n")
	figures(&b, Figures)
	b.WriteString("\n## Figures of a feeder\n\n| figure | kind | by stage | |\n|---|---|---|---|\n")
	figures(&b, FeederFigures)
	logWords(&b)
	return b.String()
}

// logWords writes the section about the log.
func logWords(b *strings.Builder) {
	b.WriteString(`
## Words of the log

A file whose name ends in ` + "`.care.log`" + ` holds one line a fact: a day, a time where it is known, ` + "`by`" + ` and the keeper who wrote it where that is to be known, an enclosure, the animals where there are several, a word, what the word needs, and a note in quotes. Files merge by union in git. Lines count by day, lines with a time on one day by time, others in the order in which they stand.

` + "```care.log" + `
2026-11-02 burrow-a young moult 1 "found on its side, left alone"
2026-11-02 19:42 by lead burrow-a young moved 2 to tub-7
2026-11-03 burrow-a young withdrawn moult 2026-11-02
` + "```" + `

An identical line is one fact: two deaths on a day are ` + "`died 2`" + `, or lines with a time. Where two people may have told the same in other words it is asked, and a count of all that are here answers it. Nothing rewrites a log: ` + "`withdrawn`" + ` takes a line back, and ` + "`vivary note --undo`" + ` writes it. How many is a number, or by sexes as the trade writes it, males.females.unsexed: ` + "`died 0.1.0`" + `. Capitals do not matter in words, and a hyphen or an underscore may stand for a blank.

| word | also | after it | |
|---|---|---|---|
`)
	for _, w := range LogWords {
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", w.Name, strings.Join(w.Also(), ", "), w.After, w.Doc)
	}
	b.WriteString(`
Somebody who cannot come from one day to the next is a fact too. In the place of the enclosure stands ` + "`keeper`" + `, and then who. It refuses nothing: what it leaves undone is urgent. As long as it is not known when they are back, two weeks from today are looked at. An absence that is planned is an ` + "`away`" + ` block.

` + "```care.log" + `
2026-11-02 keeper lead away "ill"
2026-11-05 keeper lead back
` + "```" + `

| word | |
|---|---|
`)
	for _, w := range KeeperWords {
		fmt.Fprintf(b, "| `%s` | %s |\n", w.Name, w.Doc)
	}
	b.WriteString(`
What a date of the house asks for was done: in the place of the enclosure stands ` + "`deadline`" + `, and then which.

    2027-12-02 deadline dwa-licence done "applied, vet booked for the 20th"

| word | |
|---|---|
`)
	for _, w := range DeadlineWords {
		fmt.Fprintf(b, "| `%s` | %s |\n", w.Name, w.Doc)
	}
	b.WriteString(`
A line about feeder animals has the name of the culture, the tub or the supply in the place of the enclosure. What was seen refuses nothing.

    2026-11-02 fly-jars started 2
    2026-11-02 cricket-tub counted 340
    2026-11-03 small-crickets delivered 500
    2026-11-03 cricket-tub done feeder-care

Some words mean different things to different keepers. They are never guessed: ` + "`note`" + ` asks, and in a file such a line is a remark until it is answered. The same goes for a word that is not known.

| written | may mean | |
|---|---|---|
`)
	for i := 0; i < len(Spellings); {
		s, texts := &Spellings[i], []string{}
		for ; i < len(Spellings) && Spellings[i].Hint == s.Hint && Spellings[i].Asked() == s.Asked(); i++ {
			texts = append(texts, Spellings[i].Text)
		}
		if s.Asked() {
			fmt.Fprintf(b, "| %s | `%s` | %s |\n", strings.Join(texts, ", "), strings.Join(s.May, "`, `"), s.Hint)
		}
	}
}

func figures(b *strings.Builder, list []*Figure) {
	for _, f := range list {
		kind := kindInfo[f.Kind].name
		if f.Dimension != 0 {
			kind += " of " + f.Dimension.String()
		}
		for i, c := range f.Choices {
			if i == 0 {
				kind = ""
			} else {
				kind += ", "
			}
			kind += "`" + c.Name + "`"
		}
		by := ""
		if f.ByStage {
			by = "yes"
		}
		fmt.Fprintf(b, "| `%s` | %s | %s | %s |\n", f.Name, kind, by, f.Doc)
	}
}

func reference(b *strings.Builder, block *Block, within string, seen map[*Block]bool) {
	if seen[block] {
		return
	}
	seen[block] = true
	title := "`" + block.Name + "`"
	if within != "" {
		title += " in `" + within + "`"
	}
	fmt.Fprintf(b, "\n### %s\n\n%s\n", title, block.Doc)
	if block.Label != "" {
		fmt.Fprintf(b, "Its label is the %s.\n", block.Label)
	}
	if block.Example != "" {
		fmt.Fprintf(b, "\n```hcl\n%s\n```\n", block.Example)
	}
	if len(block.Attrs) > 0 {
		b.WriteString("\n| attribute | kind | where nothing is written | | example |\n|---|---|---|---|---|\n")
	}
	for _, a := range block.Attrs {
		kind := a.Sort()
		def := a.Default
		if a.Required {
			def = "**must be written**"
		}
		doc := a.Doc
		for i, c := range a.Choices {
			switch {
			case block == Calendar && a.Name == "color":
				if i == 0 {
					doc += " One of:"
				}
				doc += " `" + c.Name + "`"
			default:
				doc += "<br>`" + c.Name + "`: " + c.Doc
				if len(c.Also) > 0 {
					doc += " (also " + strings.Join(c.Also, ", ") + ")"
				}
			}
		}
		for _, q := range a.Unclear {
			doc += "<br>" + strings.Join(q.Texts[:min(4, len(q.Texts))], ", ") + " are asked back: " + q.Ask
		}
		fmt.Fprintf(b, "| `%s` | %s | %s | %s | `%s` |\n", a.Name, kind, def, doc, strings.ReplaceAll(a.Example, "|", "\\|"))
	}
	for _, c := range block.Blocks {
		if seen[c] {
			fmt.Fprintf(b, "\nIt may hold `%s` blocks, as above.\n", c.Name)
		}
	}
	for _, c := range block.Flat {
		fmt.Fprintf(b, "\nThe attributes of `%s` may stand here without their block.\n", c.Name)
	}
	for _, c := range block.Blocks {
		reference(b, c, block.Name, seen)
	}
}

// kindInfo says how a value of each kind is written.
var kindInfo = [...]struct{ name, example, doc string }{
	Text:      {"text", `"Burrow A"`, "text in double quotes"},
	Word:      {"word", `"adult"`, "one of the words listed"},
	Words:     {"words", `"solid, latched"`, "some of the words listed, separated by commas"},
	Texts:     {"texts", `["K20", "P1"]`, "a list of texts, or one text"},
	Ref:       {"name", `"evening"`, "the name of a block"},
	Refs:      {"names", `["morning", "evening"]`, "a list of names, or one name"},
	Number:    {"number", `4`, "a number without quotes"},
	Whole:     {"whole number", `5`, "a whole number without quotes"},
	Truth:     {"truth", `true`, "true or false, without quotes"},
	Quantity:  {"quantity", `"28 W"`, "a number with a unit, metric or US customary, short or in full: 28 W, 28 watts, 2.5 cm, 2,5 cm, 1/2 cup"},
	Range:     {"range", `"27 to 32 C"`, "a quantity, or two with to or a dash between them"},
	Numbers:   {"numbers", `"10 to 35"`, "a plain number, or two with to or a dash between them"},
	Size:      {"size", `"76 x 46 x 41 cm"`, "length, width and height, with x, × or by between them"},
	Face2D:    {"face", `"28 x 43 cm"`, "length and width"},
	Count:     {"count", `"1.2.0"`, "males.females.unsexed, or a whole number"},
	Date:      {"date", `"2027-07-10"`, "year-month-day; or 10 July 2027, July 10, 2027 and the like, where it can be one day only"},
	Clock:     {"time", `"19:30"`, "a time of day from 04:00 to 23:59; or 7:30 pm, 8 am, 12 noon"},
	Clocks:    {"times", `["08:00", "19:30"]`, "a time of day, or a list of them"},
	Every:     {"interval", `"3 days"`, "day, week, month or year, or a number of them; or daily, weekly, every other day, fortnightly"},
	On:        {"days", `["mon to fri", "first sun", "15th", "last", "1 apr", "2027-07-20 to 2027-09-01", "school-holidays"]`, "weekdays, weekdays of the month, days of the month (`last`), days of the year, dates, each also from one `to` another, and names of dates blocks; one text may hold several: tue and fri, weekdays"},
	DayOfYear: {"day of the year", `"1 nov"`, "a day and a month"},
	Cron:      {"cron line", `"30 19 * * 1,4"`, "minute, hour, day, month, weekday (0 is Sunday)"},
	Zone:      {"time zone", `"Europe/London"`, "a name of the IANA database"},
	Prey:      {"prey", `"cricket adult"`, "a feeder and its size"},
	Menu:      {"menu", `["cricket adult", "roach medium"]`, "prey taken in turn"},
	Wholes:    {"whole numbers", "`[50, 250]`", "whole numbers from 1 on, without quotes, one alone or several in a list"},
	Spans:     {"numbers and ranges", `"1 to 12, 15, 20 to 24"`, "whole numbers and ranges of them, separated by commas; with zeros before them where the names have them: \"01 to 40\""},
	Link:      {"web address", `"https://care.quillmoor.example/feeds"`, "begins with https://"},
}
