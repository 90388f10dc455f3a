package quantity

import (
	"strings"
	"testing"
)

// What is wrong is said of what was typed, and what to write is made from that, or both
// meanings are given, or there is none.
func TestErrors(t *testing.T) {
	for _, c := range []struct {
		text    string
		dim     Dimension
		kind    Kind
		want    string // the whole message, or its beginning where it ends in "…"
		instead string // what it becomes, with a bar between two meanings
	}{
		{"", Temperature, NoNumber, `"" does not begin with a number`, ""},
		{"warm", Temperature, NoNumber, `"warm" does not begin with a number`, ""},
		{"NaN C", Temperature, NoNumber, `"NaN C" …`, ""},
		{"Inf C", Temperature, NoNumber, `"Inf C" …`, ""},
		{"30", Temperature, NoUnit, `"30" has no unit`, "30 C|30 F"},
		{"27 to 32", Temperature, NoUnit, `"27 to 32" has no unit`, "27 to 32 C|27 to 32 F"},
		{"28 degrees", Temperature, NoScale, `"28 degrees" does not say in which degrees`, "28 C|28 F"},
		{"27° to 32°", Temperature, NoScale, `"27° to 32°" does not …`, "27 to 32 C|27 to 32 F"},
		{"2 deg", TemperatureStep, NoScale, `"2 deg" does not …`, "2 C|2 F"},
		{"75", Humidity, NoUnit, `"75" has no unit`, "75 %"},
		{"75-85", Humidity, NoUnit, `"75-85" has no unit`, "75 to 85 %"},
		{"28", Power, NoUnit, `"28" has no unit`, "28 W"},
		{"16", Length, NoUnit, `"16" has no unit`, "16 cm|16 in|16 mm"},
		{"30", Ratio, NoUnit, `"30" has no unit`, "30 %"},
		{"30 %", Temperature, WrongUnit, `"30 %" is not a temperature: "%" is a unit of humidity or share`, ""},
		{"300 K", Temperature, WrongUnit, `"300 K" is not a temperature: "K" is a unit of temperature difference`, ""},
		{"30 C", Length, WrongUnit, `"30 C" is not a length: …`, ""},
		{"4 oz", Volume, WrongUnit, `"4 oz" is not a volume: "oz" is a unit of mass`, ""},
		{"30 Celcius", Temperature, UnknownUnit, `"30 Celcius": there is no unit "Celcius" for a temperature`, "30 C"},
		{"3 dyas", Duration, UnknownUnit, `"3 dyas": there is no unit "dyas" for a duration`, "3 days"},
		{"30 s", Duration, UnknownUnit, `"30 s": there is no unit "s" for a duration`, ""},
		{"32 to 27 C", Temperature, OutOfOrder, `"32 to 27 C" has its lower value last`, "27 to 32 C"},
		{"29 C - 27 C", Temperature, OutOfOrder, `"29 C - 27 C" has its lower value last`, "27 to 29 C"},
		{"-273.16 C", Temperature, OutOfBounds, `"-273.16 C" is below absolute zero (-273.15 C, -459.67 F)`, ""},
		{"-459.68 F", Temperature, OutOfBounds, `"-459.68 F" is below absolute zero …`, ""},
		{"101 %", Humidity, OutOfBounds, `"101 %" is more than 100 %, which air can't hold`, ""},
		{"-5 cm", Length, OutOfBounds, `"-5 cm" is below zero`, ""},
		{"-2 C", TemperatureStep, OutOfBounds, `"-2 C" is below zero`, ""},
		{"1000001 m", Length, OutOfBounds, `"1000001 m" is too large to be meant`, ""},
		{strings.Repeat("9", 400) + " C", Temperature, OutOfBounds, `"` + strings.Repeat("9", 60) + `…" is too large to be meant`, ""},
		{"1,500 ml", Volume, Malformed, `"1,500 ml" has a comma that may mark decimals or thousands`, "1.500 ml|1500 ml"},
		{"1 500 ml", Volume, Malformed, `"1 500 ml" is more than one number and one unit`, "1500 ml"},
		{"2/5 cup", Volume, Malformed, `"2/5 cup" has a fraction that is not read`, ""},
		{"75/85 %", Humidity, Malformed, `"75/85 %" has a fraction …`, "75 to 85 %"},
		{"27.5.1 C", Temperature, Malformed, `"27.5.1 C" has a point …`, ""},
		{"27 C to 90 F", Temperature, Malformed, `"27 C to 90 F" has two units: …`, ""},
		{"12 in to 2 ft", Length, Malformed, `"12 in to 2 ft" has two units: …`, "1 to 2 ft"},
		{"27 to C", Temperature, Malformed, `"27 to C" has no number after the dash or the "to"`, ""},
		{"20 to 27 to 32 C", Temperature, Malformed, `"20 to 27 to 32 C" is more than one number and one unit`, ""},
		{"1 year 6 months", Duration, Malformed, `"1 year 6 months" is more than one number and one unit`, "18 months"},
		{"1 ft 6 in", Length, Malformed, `"1 ft 6 in" is more …`, "18 in"},
		{"1 h 30 min", Duration, Malformed, `"1 h 30 min" is more …`, "90 min"},
		{"1 h 90 min", Duration, Malformed, `"1 h 90 min" is more …`, ""},
		{"86 F (30 C)", Temperature, Malformed, `"86 F (30 C)" is more …`, "86 F"},
		{"30 C / 86 F", Temperature, Malformed, `"30 C / 86 F" is more …`, "30 C"},
		{"30 C / 90 F", Temperature, Malformed, `"30 C / 90 F" is more …`, ""},
		{"30 ± 2 C", Temperature, Malformed, `"30 ± 2 C" is more than one number and one unit`, "28 to 32 C"},
		{"about 30 C", Temperature, NoNumber, `"about 30 C" …`, "30 C"},
		{"16 cm deep", Length, UnknownUnit, `"16 cm deep": …`, "16 cm"},
		{"150 ml daily", Volume, UnknownUnit, `"150 ml daily": …`, "150 ml"},
		{"±1 C", TemperatureStep, NoNumber, `"±1 C" …`, "1 C"},
		{"30 C", 0, WrongUnit, `"30 C" is not a value: …`, ""},
	} {
		_, err := ParseRange(c.text, c.dim)
		checkError(t, c.text, err, c.kind, c.want, c.instead)
	}
	for _, text := range []string{"27 to 32 C", "27-32 C", "27–32 C"} {
		_, err := Parse(text, Temperature)
		checkError(t, text, err, Malformed, `"`+text+`" is more than one number and one unit`, "")
	}
	_, err := Parse("30 Celcius", Temperature)
	if e, ok := err.(*Error); !ok || e.Nearest != "C" || e.Unit != "Celcius" || e.Like() != `a temperature, such as "30 C" or "86 F"` {
		t.Errorf("%#v", err)
	}
}

func checkError(t *testing.T, text string, err error, kind Kind, want, instead string) {
	t.Helper()
	e, ok := err.(*Error)
	if !ok {
		t.Errorf("%q: error %v, want one of kind %v", text, err, kind)
		return
	}
	begin, open := strings.CutSuffix(want, "…")
	if e.Kind != kind || e.Text != text || !(e.Error() == want || open && strings.HasPrefix(e.Error(), begin)) {
		t.Errorf("%q: %v: %s\nwant %v: %s", text, e.Kind, e, kind, want)
	}
	if got := strings.Join(e.Either, "|"); instead != e.Instead && (e.Instead != "" || instead != got) {
		t.Errorf("%q becomes %q or %q, want %q", text, e.Instead, got, instead)
	}
}

// A scale that is missing or mistaken is told by where the figure lies.
func TestScales(t *testing.T) {
	house := Range{0, 50, Celsius}
	for text, want := range map[string]string{
		"28": "28 C", "28 degrees": "28 C", "82": "82 F", "27-32": "27 to 32 C", "80 to 90": "80 to 90 F", "45": "45 C|45 F", "-10": "", "300": "",
	} {
		_, err := ParseRange(text, Temperature)
		e := err.(*Error)
		if got := strings.Join(e.Readings(Temperature, house, nil), "|"); got != want {
			t.Errorf("%s: %s, want %s", text, got, want)
		}
	}
	for text, want := range map[string]string{"82 C": "82 F", "28 F": "28 C", "18 to 22 F": "18 to 22 C", "75-85 C": "75 to 85 F"} {
		r, _ := ParseRange(text, Temperature)
		if got, ok := OtherScale(r, house); !ok || got != want {
			t.Errorf("%s: %s, %v", text, got, ok)
		}
	}
	for _, text := range []string{"30 C", "86 F", "50 C", "32 F", "45 to 82 C", "-40 C", "-40 F", "300 C"} {
		r, err := ParseRange(text, Temperature)
		if got, ok := OtherScale(r, house); ok || err != nil {
			t.Errorf("%s: %s, %v", text, got, err)
		}
	}
}
