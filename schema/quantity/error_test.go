package quantity

import (
	"strings"
	"testing"
)

func TestErrors(t *testing.T) {
	for _, c := range []struct {
		text string
		dim  Dimension
		kind Kind
		want string // the whole message, or its beginning where it ends in "…"
	}{
		{"", Temperature, NoNumber, `"" does not begin with a number: a temperature is written like "30 C" or "86 F"`},
		{"warm", Temperature, NoNumber, `"warm" does not begin with a number: …`},
		{"NaN C", Temperature, NoNumber, `"NaN C" …`},
		{"Inf C", Temperature, NoNumber, `"Inf C" …`},
		{"30", Temperature, NoUnit, `"30" has no unit: a temperature is written like "30 C" or "86 F"`},
		{"27 to 32", Temperature, NoUnit, `"27 to 32" has no unit: …`},
		{"27 C to 32", Temperature, NoUnit, `"27 C to 32" ends without a unit: write "27 C to 32 C"`},
		{"30", Ratio, NoUnit, `"30" has no unit: a share is written like "30 %" or "0.3"`},
		{"30 %", Temperature, WrongUnit, `"30 %" is not a temperature: "%" is a unit of humidity or share; a temperature is written like "30 C" or "86 F"`},
		{"300 K", Temperature, WrongUnit, `"300 K" is not a temperature: "K" is a unit of temperature difference; …`},
		{"30 C", Length, WrongUnit, `"30 C" is not a length: …`},
		{"4 oz", Volume, WrongUnit, `"4 oz" is not a volume: "oz" is a unit of mass; …`},
		{"30 Celcius", Temperature, UnknownUnit, `"30 Celcius": there is no unit "Celcius" for a temperature; write "30 C"`},
		{"27 to 32 Celsius", Temperature, UnknownUnit, `"27 to 32 Celsius": there is no unit "Celsius" for a temperature; write "27 to 32 C"`},
		{"76 CM", Length, UnknownUnit, `"76 CM": there is no unit "CM" for a length; write "76 cm"`},
		{"3 hrs", Duration, UnknownUnit, `"3 hrs": there is no unit "hrs" for a duration; write "3 h"`},
		{"30 s", Duration, UnknownUnit, `"30 s": there is no unit "s" for a duration; a duration is written like "30 min", "12 h" or "3 days"`},
		{"32 to 27 C", Temperature, OutOfOrder, `"32 to 27 C" has its lower value last: write "27 to 32 C"`},
		{"-273.16 C", Temperature, OutOfBounds, `"-273.16 C" is below absolute zero (-273.15 C, -459.67 F): …`},
		{"-459.68 F", Temperature, OutOfBounds, `"-459.68 F" is below absolute zero …`},
		{"101 %", Humidity, OutOfBounds, `"101 %" is more than 100 %, which air can't hold: …`},
		{"-5 cm", Length, OutOfBounds, `"-5 cm" is below zero: a length is written like "16 cm" or "6 in"`},
		{"-2 C", TemperatureStep, OutOfBounds, `"-2 C" is below zero: …`},
		{"1000001 m", Length, OutOfBounds, `"1000001 m" is too large to be meant: …`},
		{strings.Repeat("9", 400) + " C", Temperature, OutOfBounds, `"` + strings.Repeat("9", 60) + `…" is too large to be meant: …`},
		{"27,5 C", Temperature, Malformed, `"27,5 C" has a comma: decimals are written with a point and thousands without a mark: write "27.5 C"`},
		{"27,5 to 32,5 C", Temperature, Malformed, `"27,5 to 32,5 C" has a comma: decimals are written with a point and thousands without a mark: write "27.5 to 32.5 C"`},
		{"1,000 ml", Volume, Malformed, `"1,000 ml" has a comma that may mark decimals or thousands: …`},
		{"1/2 cup", Volume, Malformed, `"1/2 cup" has a fraction: it is written with decimals, such as 0.5: …`},
		{"1 1/2 in", Length, Malformed, `"1 1/2 in" has a fraction: …`},
		{"1½ in", Length, Malformed, `"1½ in" has a fraction: …`},
		{"27. C", Temperature, Malformed, `"27. C" has a point …`},
		{"27.5.1 C", Temperature, Malformed, `"27.5.1 C" has a point …`},
		{"27  C", Temperature, Malformed, `"27  C" has stray spaces: one or none stands between number and unit: write "27 C"`},
		{"27  to  32 C", Temperature, Malformed, `"27  to  32 C" has stray spaces: …`},
		{"27 C to 90 F", Temperature, Malformed, `"27 C to 90 F" has two units: …`},
		{"27 to C", Temperature, Malformed, `"27 to C" has no number after the dash or the "to": …`},
		{"20 to 27 to 32 C", Temperature, Malformed, `"20 to 27 to 32 C" is more than one number and one unit: …`},
		{"1 year 6 months", Duration, Malformed, `"1 year 6 months" is more than one number and one unit: …`},
		{"30 C", 0, WrongUnit, `"30 C" is not a value: …`},
	} {
		_, err := ParseRange(c.text, c.dim)
		checkError(t, c.text, err, c.kind, c.want)
	}
	for _, text := range []string{"27 to 32 C", "27-32 C", "27–32 C"} {
		_, err := Parse(text, Temperature)
		checkError(t, text, err, Malformed, `"`+text+`" is more than one number and one unit: a temperature is written like "30 C" or "86 F"`)
	}
	_, err := Parse("30 Celcius", Temperature)
	if e, ok := err.(*Error); !ok || e.Nearest != "C" || e.Unit != "Celcius" || e.Instead != "30 C" {
		t.Errorf("%#v", err)
	}
}

func checkError(t *testing.T, text string, err error, kind Kind, want string) {
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
}
