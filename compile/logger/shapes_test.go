package logger

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
	"time"

	"golang.org/x/text/encoding/unicode"
)

// truth is one series in many shapes: three days and a half of ten minutes, in London.
func truth() (at []time.Time, heat, damp []float64) {
	london, _ := time.LoadLocation("Europe/London")
	start := time.Date(2026, 11, 3, 9, 0, 0, 0, london)
	for k := range 500 {
		at = append(at, start.Add(time.Duration(k)*10*time.Minute))
		heat = append(heat, math.Round(10*(24+4*math.Sin(float64(k)/23)))/10)
		damp = append(damp, math.Round(10*(70+8*math.Cos(float64(k)/31)))/10)
	}
	return at, heat, damp
}

type shapeCase struct {
	name   string
	before string
	row    func(k int, t time.Time, heat, damp float64) string
	end    string
	o      Options
	whole  func(string) string // what is done to the text as a whole
	noDamp bool
	loose  float64 // how far a value may be off, for what is rounded
}

func point(x float64) string { return strconv.FormatFloat(x, 'f', 1, 64) }
func komma(x float64) string { return strings.ReplaceAll(point(x), ".", ",") }
func fahr(x float64) string  { return strconv.FormatFloat(x*1.8+32, 'f', 2, 64) }

func layout(form, sep string, decimal func(float64) string) func(int, time.Time, float64, float64) string {
	return func(_ int, t time.Time, heat, damp float64) string {
		return t.Format(form) + sep + decimal(heat) + sep + decimal(damp)
	}
}

var shapes = []shapeCase{
	{name: "ISO, comma", before: "time,temperature,humidity\n", row: layout("2006-01-02T15:04:05", ",", point)},
	{name: "ISO with zone", before: "time,temp,rh\n", row: layout("2006-01-02T15:04:05Z07:00", ",", point)},
	{name: "ISO in UTC", before: "time,temp,rh\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.UTC().Format("2006-01-02T15:04:05Z") + "," + point(h) + "," + point(d)
	}},
	{name: "UTC in the heading", before: "Time (UTC);T °C;RH %\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.UTC().Format("2006-01-02 15:04:05") + ";" + komma(h) + ";" + komma(d)
	}},
	{name: "no heading", row: layout("2006-01-02 15:04", ",", point)},
	{name: "semicolon, decimal comma, points in the day", before: "Datum;Temperatur;Luftfeuchte\n", row: layout("02.01.2006 15:04:05", ";", komma)},
	{name: "tab", before: "Date\tTemp C\tHumidity\n", row: layout("2006-01-02 15:04", "\t", point)},
	{name: "tab, decimal comma", before: "Date\tTemp C\tHumidity\n", row: layout("2006-01-02 15:04", "\t", komma)},
	{name: "quoted, comma and point, dd/mm", before: "\"datetime\",\"Temperature (Celcius)\",\"Humidity\"\n", row: func(_ int, t time.Time, h, d float64) string {
		return `"` + t.Format("02/01/2006 15:04:05") + `","` + point(h) + `","` + point(d) + `"`
	}},
	{name: "quoted decimal commas between commas", before: "\"Zeit\",\"Temp\",\"Feuchte\"\n", row: func(_ int, t time.Time, h, d float64) string {
		return `"` + t.Format("02.01.2006 15:04:05") + `","` + komma(h) + `","` + komma(d) + `"`
	}},
	{name: "mm/dd by the order of the file", before: "Date,Temp,RH\n", row: layout("01/02/2006 15:04:05", ",", point)},
	{name: "dd/mm by the order of the file", before: "Date,Temp,RH\n", row: layout("02/01/2006 15:04:05", ",", point)},
	{name: "mm/dd with AM and PM", before: "Date Time,Temp,RH\n", row: layout("1/2/2006 3:04:05 PM", ",", point)},
	{name: "two digits of the year", before: "Date Time,Temp,RH\n", row: layout("02/01/06 15:04", ",", point), o: Options{Order: DayFirst}},
	{name: "day and time apart", before: "Date;Time;Temp;RH\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("02.01.2006;15:04:05;") + komma(h) + ";" + komma(d)
	}},
	{name: "apart, with AM and PM in a column", before: "Date,Time,,Temp,RH\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02,3:04:05,PM,") + point(h) + "," + point(d)
	}},
	{name: "a letter for the state, signs and zeros", before: "Logger 7\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006/01/02,") + "L," + t.Format("15:04,") + fmt.Sprintf("%+07.2f,%05.1f", h, d)
	}},
	{name: "preamble, units in a line of their own", before: "Model;XT-9\nSerial;0042\nBegun;3.11.2026\n\nTime;Temperature;Humidity\n;°C;%RH\n", row: layout("2006-01-02 15:04:05", ";", komma)},
	{name: "a mark of the encoding", before: "\xef\xbb\xbftime;temp;humidity\n", row: layout("2006-01-02 15:04", ";", komma)},
	{name: "Latin-1 in the heading", before: "Zeit;Temp \xb0C;rF %\n", row: layout("02.01.2006 15:04", ";", komma)},
	{name: "line ends of Windows", before: "time,temp,rh\r\n", row: layout("2006-01-02 15:04", ",", point), end: "\r\n"},
	{name: "carriage returns alone", before: "time,temp,rh\r", row: layout("2006-01-02 15:04", ",", point), end: "\r"},
	{name: "UTF-16", before: "time;temp;rh\n", row: layout("2006-01-02 15:04", ";", komma), whole: func(s string) string {
		out, _ := unicode.UTF16(unicode.LittleEndian, unicode.UseBOM).NewEncoder().String(s)
		return out
	}},
	{name: "epoch in seconds", before: "ts,temp,rh\n", row: func(_ int, t time.Time, h, d float64) string {
		return fmt.Sprintf("%d,%s,%s", t.Unix(), point(h), point(d))
	}},
	{name: "epoch in milliseconds, no heading", row: func(_ int, t time.Time, h, d float64) string {
		return fmt.Sprintf("%d;%s;%s", t.UnixMilli(), komma(h), komma(d))
	}},
	{name: "days of a spreadsheet", before: "Time,Temp,RH\n", row: func(_ int, t time.Time, h, d float64) string {
		_, off := t.Zone()
		return fmt.Sprintf("%.6f,%s,%s", float64(t.Unix()+int64(off))/86400+25569, point(h), point(d))
	}},
	{name: "Fahrenheit in the heading", before: "Time,Temp °F,RH\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04,") + fahr(h) + "," + point(d)
	}, loose: 0.01},
	{name: "Fahrenheit told by the values", before: "Time,Temp,RH\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04,") + fahr(h) + "," + point(d)
	}, loose: 0.01},
	{name: "units behind the values", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04;") + komma(h) + " °C;" + komma(d) + " %"
	}},
	{name: "Fahrenheit behind the values", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04,") + fahr(h) + "F," + point(d) + "%"
	}, loose: 0.01},
	{name: "numbered lines and more columns", before: "#,Date-Time,Temp (°C),Dew Point (°C),RH (%),Batt (V)\n", row: func(k int, t time.Time, h, d float64) string {
		return fmt.Sprintf("%d,%s,%s,12.1,%s,3.01", k+1, t.Format("01/02/06 03:04:05 PM"), point(h), point(d))
	}, o: Options{Order: MonthFirst}},
	{name: "the humidity first", before: "Humidity,Temperature,Time\n", row: func(_ int, t time.Time, h, d float64) string {
		return point(d) + "," + point(h) + "," + t.Format("2006-01-02 15:04:05")
	}},
	{name: "months by name", before: "When;Temp;RH\n", row: layout("2-Jan-2006 15:04", ";", komma)},
	{name: "months by name, American", before: "When\tTemp\tRH\n", row: layout("Jan 2, 2006 3:04:05 PM", "\t", point)},
	{name: "weekday and month", before: "When;Temp;RH\n", row: layout("Mon 2 Jan 2006 15:04", ";", komma)},
	{name: "the newest first", before: "time,temp,rh\n", row: layout("2006-01-02 15:04", ",", point), whole: func(s string) string {
		lines := strings.Split(strings.TrimSuffix(s, "\n"), "\n")
		for i, j := 1, len(lines)-1; i < j; i, j = i+1, j-1 {
			lines[i], lines[j] = lines[j], lines[i]
		}
		return strings.Join(lines, "\n") + "\n"
	}},
	{name: "compact", before: "time,temp,rh\n", row: layout("20060102T150405", ",", point)},
	{name: "milliseconds", before: "time,temp,rh\n", row: layout("2006-01-02 15:04:05.000", ",", point)},
	{name: "no end of the last line", before: "time,temp,rh\n", row: layout("2006-01-02 15:04", ",", point), whole: func(s string) string { return strings.TrimSuffix(s, "\n") }},
	{name: "no humidity", before: "time,temp\n", row: func(_ int, t time.Time, h, _ float64) string { return t.Format("2006-01-02 15:04,") + point(h) }, noDamp: true},
	{name: "another probe beside it, named by number", before: "time;T1;T2;rh\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04;") + "19,0;" + komma(h) + ";" + komma(d)
	}, o: Options{Columns: map[string]string{"temperature": "3", "humidity": "4"}}},
	{name: "another probe beside it, named by heading", before: "time;Temp room;Temp box;rh\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04;") + "19,0;" + komma(h) + ";" + komma(d)
	}, o: Options{Columns: map[string]string{"temperature": "box", "humidity": "rh"}}},
	{name: "humidity as parts of 1", before: "time,temp,rh\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04,") + point(h) + "," + strconv.FormatFloat(d/100, 'f', 3, 64)
	}},
	{name: "closing separators", before: "time;temp;rh;\n", row: func(_ int, t time.Time, h, d float64) string {
		return t.Format("2006-01-02 15:04;") + komma(h) + ";" + komma(d) + ";"
	}},
}

// Whatever the shape, it is the same series.
func TestShapes(t *testing.T) {
	at, heats, damps := truth()
	london, _ := time.LoadLocation("Europe/London")
	if len(shapes) < 30 {
		t.Fatal("fewer shapes than are promised")
	}
	for _, c := range shapes {
		t.Run(c.name, func(t *testing.T) {
			var b strings.Builder
			b.WriteString(c.before)
			end := c.end
			if end == "" {
				end = "\n"
			}
			for k := range at {
				b.WriteString(c.row(k, at[k], heats[k], damps[k]) + end)
			}
			text := b.String()
			if c.whole != nil {
				text = c.whole(text)
			}
			o := c.o
			o.Zone = london
			s, err := Read(strings.NewReader(text), o)
			if err != nil {
				t.Fatalf("%v\n%s", err, text[:200])
			}
			if len(s.Samples) != len(at) || len(s.Problems) > 0 || s.Step != 600 || s.Missing > 0 {
				t.Fatalf("%d samples of %d, step %d, %d missing, %v; %s", len(s.Samples), len(at), s.Step, s.Missing, s.Problems, &s.Shape)
			}
			for k, x := range s.Samples {
				if x.At != at[k].Unix() || math.Abs(x.Heat-heats[k]) > c.loose+1e-9 || !c.noDamp && math.Abs(x.Damp-damps[k]) > 1e-9 || c.noDamp && !None(x.Damp) {
					t.Fatalf("sample %d is %s %v %v, not %s %v %v; %s", k, time.Unix(x.At, 0).UTC(), x.Heat, x.Damp, at[k].UTC(), heats[k], damps[k], &s.Shape)
				}
			}
		})
	}
}

// What is no reading is none, and what is one stays: each mark once among good ones.
func TestNoReading(t *testing.T) {
	for _, mark := range []string{"85.0", "85", "-127", "-127.00", "-40", "-40.0", "NaN", "nan", "--", "---", "", "n/a", "NULL", "ERR", "999", "-999", "OL"} {
		text := "time,temp,rh\n2026-11-20 10:00,21.5,60\n2026-11-20 10:10," + mark + ",61\n2026-11-20 10:20,21.7,62\n"
		s, err := Read(strings.NewReader(text), Options{})
		if err != nil {
			t.Errorf("%q: %v", mark, err)
			continue
		}
		if len(s.Samples) != 3 || !None(s.Samples[1].Heat) || s.Samples[1].Damp != 61 || s.Missing != 1 || len(s.Problems) > 0 {
			t.Errorf("%q: %+v, %d missing, %v", mark, s.Samples, s.Missing, s.Problems)
		}
	}
	// In Fahrenheit 85 is a warm day.
	s, err := Read(strings.NewReader("time,temp F,rh\n2026-11-20 10:00,84.9,60\n2026-11-20 10:10,85.0,61\n2026-11-20 10:20,185,62\n"), Options{})
	if err != nil || math.Abs(s.Samples[1].Heat-29.4444) > 1e-3 || !None(s.Samples[2].Heat) {
		t.Errorf("%v %+v", err, s)
	}
}

// Days that can be read in two ways are asked about; nothing is guessed.
func TestAsked(t *testing.T) {
	one := "time,temp\n03/04/2026 10:00,21\n03/04/2026 10:10,22\n03/04/2026 10:20,22\n"
	if _, err := Read(strings.NewReader(one), Options{}); err == nil || !strings.Contains(err.Error(), "--dates") {
		t.Errorf("%v", err)
	}
	s, err := Read(strings.NewReader(one), Options{Order: MonthFirst})
	if err != nil || s.First().Month() != time.March {
		t.Errorf("%v %v", err, s)
	}
	mixed := "time,temp\n13/04/2026 10:00,21\n04/14/2026 10:10,22\n15/04/2026 10:20,22\n"
	if _, err := Read(strings.NewReader(mixed), Options{}); err == nil || !strings.Contains(err.Error(), "now with the day first") {
		t.Errorf("%v", err)
	}
}
