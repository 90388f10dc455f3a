package main

import (
	"errors"
	"fmt"
	"io"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"vivary/cmd/internal/journal"
	"vivary/compile"
	"vivary/compile/life"
	"vivary/compile/logger"
	"vivary/compile/measure"
	"vivary/compile/readings"
	"vivary/schema/civil"
	"vivary/schema/quantity"
	"vivary/schema/wording"
	"vivary/schema/zone"
)

// mostFiles is how many files are read at once.
const mostFiles = 20

// readingsOf says what loggers showed of an enclosure.
func readingsOf(w *world, f *flags, args []string) int {
	r, root, status := w.toPrint("readings", f, nil)
	if status != fine {
		return status
	}
	o, err := f.readAs(r)
	var l *life.Enclosure
	var files []*readings.File
	if err == nil {
		l, files, err = w.logged(r, f, args, o.read)
	}
	if err != nil {
		fmt.Fprintf(w.err, "vivary readings: %v\n", wording.Plain(err))
		return usage
	}
	report := readings.Of(r, l, files, o.judge)
	if f.svg != "" {
		return w.draw(f, "readings", func(to io.Writer) error { return report.Track(o.week).Draw(to, f.narrow) })
	}
	if f.format == "json" {
		printJSON(w, newReadingsForm(report))
	} else {
		printAnswer(w.out, report.Answer())
	}
	if f.note {
		w.flush()
		return w.keep(f, root, report)
	}
	return fine
}

// asRead is what flags say of how files are read and judged.
type asRead struct {
	read  logger.Options
	judge readings.Options
	week  civil.Date // 0 for all of it
}

// readAs reads those flags.
func (f *flags) readAs(r *compile.Result) (o asRead, err error) {
	o.read.Zone = r.Now.Location()
	if f.zone != "" {
		if o.read.Zone, err = zone.Load(f.zone); err != nil {
			return o, fmt.Errorf("--zone: %w", err)
		}
	}
	if f.dates != "" {
		k := slices.Index(logger.Orders, f.dates)
		if k < 1 {
			return o, fmt.Errorf("--dates is %s, not %q", wording.Or(logger.Orders[1:]), f.dates)
		}
		o.read.Order = logger.Order(k)
	}
	switch d := strings.ToUpper(f.degrees); d {
	case "":
	case "C", "F":
		o.read.Degrees = d[0]
	default:
		return o, fmt.Errorf("--degrees is C or F, not %q", f.degrees)
	}
	for part := range strings.FieldsSeq(strings.ReplaceAll(f.columns, ",", " ")) {
		what, which, ok := strings.Cut(part, "=")
		if !ok || which == "" {
			return o, fmt.Errorf("--columns says which column is what, such as \"time=1 temperature=3\", and not %q", part)
		}
		if o.read.Columns == nil {
			o.read.Columns = map[string]string{}
		}
		o.read.Columns[what] = which
	}
	if f.week != "" {
		if o.week, err = civil.Parse(f.week); err != nil {
			return o, fmt.Errorf("--week: %w", err)
		}
	}
	if f.svg == "" && (f.week != "" || f.narrow) {
		return o, errors.New("--week and --narrow go with --svg: they are about what is drawn")
	}
	if f.power != "" {
		q, err := quantity.Parse(f.power, quantity.Power)
		if err != nil {
			return o, fmt.Errorf("--power: %w", err)
		}
		o.judge.Watt = q.Value
	}
	if f.day != "" {
		from, until, ok := strings.Cut(f.day, " to ")
		a, errA := civil.ReadClock(strings.TrimSpace(from))
		b, errB := civil.ReadClock(strings.TrimSpace(until))
		if !ok || errA != nil || errB != nil || a >= b {
			return o, fmt.Errorf("--day is from when to when it is day, such as \"08:00 to 20:00\", and not %q", f.day)
		}
		o.judge.Day = readings.Daylight{From: a, Until: b}
	}
	return o, nil
}

// logged reads the files that are named, and finds the enclosure that they are about.
func (w *world) logged(r *compile.Result, f *flags, args []string, o logger.Options) (*life.Enclosure, []*readings.File, error) {
	switch {
	case len(args) == 0:
		return nil, nil, errors.New("name the files that a logger wrote: vivary readings air=box.csv room=room.csv --enclosure NAME")
	case len(args) > mostFiles:
		return nil, nil, fmt.Errorf("these are %d files: %d at most are read at once", len(args), mostFiles)
	}
	var l *life.Enclosure
	var err error
	if f.enclosure != "" {
		if l, err = about(r, f.enclosure); err != nil {
			return nil, nil, err
		}
	}
	var files []*readings.File
	for _, arg := range args {
		x := &readings.File{Place: measure.Air}
		path, placed := arg, false
		if before, after, ok := strings.Cut(arg, "="); ok && slices.Contains(measure.Places, before) {
			x.Place, path, placed = before, after, true
		}
		x.Name = filepath.ToSlash(path)
		known := slices.DeleteFunc(readings.GaugesFor(r.Plan, r.Lives, x.Name), func(g readings.Found) bool {
			return placed && g.Place != x.Place || l != nil && !g.Of(l, r.Plan)
		})
		switch {
		case len(known) > 1:
			return nil, nil, fmt.Errorf("%s may be of gauge %s and of gauge %s: say of which place and enclosure it is, or write files more narrowly in the plan", x.Name, known[0].Gauge.Name.V, known[1].Gauge.Name.V)
		case len(known) == 1:
			x.Gauge, x.Place, x.Tests = known[0].Gauge, known[0].Place, known[0].Tests
			if l == nil {
				l = known[0].Life
			}
		}
		x.Off = measure.AccuracyOf(x.Gauge)
		if x.Series, err = w.readLogger(path, o); err != nil {
			return nil, nil, fmt.Errorf("%s: %w", x.Name, err)
		}
		files = append(files, x)
	}
	if l == nil {
		l, err = about(r, "")
	}
	return l, files, err
}

// readLogger reads one file.
func (w *world) readLogger(path string, o logger.Options) (*logger.Series, error) {
	file, err := w.disk.Open(path)
	if err != nil {
		return nil, errors.New(wording.Reason(err))
	}
	defer func() { _ = file.Close() }() // it was only read
	if info, err := file.Stat(); err == nil && info.IsDir() {
		return nil, errors.New("this is a folder: name the file in it")
	}
	return logger.Read(file, o)
}

// about is the enclosure that files are about: the one that is named, or the only one.
func about(r *compile.Result, name string) (*life.Enclosure, error) {
	if name == "" && len(r.Lives) == 1 {
		return r.Lives[0], nil
	}
	if name == "" {
		return nil, errors.New("which enclosure are they about? --enclosure NAME, or in the plan a gauge block that names its files")
	}
	k := slices.IndexFunc(r.Lives, func(l *life.Enclosure) bool { return l.Plan.Name.V == name })
	if k < 0 {
		return nil, fmt.Errorf("there is no enclosure %q", name)
	}
	return r.Lives[k], nil
}

// instant is a time in JSON.
func instant(at int64, loc *time.Location) string {
	return time.Unix(at, 0).In(loc).Format(time.RFC3339)
}

// keep appends the lines of a report to the log, those that do not stand there yet, and says
// where.
func (w *world) keep(f *flags, root string, report *readings.Report) int {
	if len(report.Lines) == 0 {
		fmt.Fprintln(w.err, "vivary readings: there is nothing to note.")
		return fine
	}
	held, err := w.journal(f, root).Hold()
	if err != nil {
		return w.unheld(err)
	}
	defer held.Release()
	byLog := map[string][]string{}
	var logs []string
	for _, l := range report.Lines {
		name := journal.LogName(l.On, "")
		if byLog[name] == nil {
			logs = append(logs, name)
		}
		byLog[name] = append(byLog[name], l.Text)
	}
	for _, name := range logs {
		out, err := held.Write(name, byLog[name])
		if err != nil {
			fmt.Fprintf(w.err, "vivary readings: %v. Nothing was written.\n", wording.Plain(err))
			return refused
		}
		if out.Slips {
			_ = out.With.Printer().Print(w.err, out.Findings)
			fmt.Fprintln(w.err, "\nNothing was written.")
			return refused
		}
		for _, line := range byLog[name] {
			if at := out.Already[line]; at != "" {
				fmt.Fprintf(w.err, "%s says that already: %s\n", at, line)
			} else {
				fmt.Fprintf(w.err, "Noted in %s: %s\n", out.Path, line)
			}
		}
	}
	return fine
}
