package plan

import (
	"testing"

	"vivary/schema"
	"vivary/schema/quantity"
)

// TestSpelt: each text as it is spelt in a tidy plan; "" for one that stays as it is.
func TestSpelt(t *testing.T) {
	temperature := &schema.Attr{Kind: schema.Range, Dimension: quantity.Temperature}
	length := &schema.Attr{Kind: schema.Quantity, Dimension: quantity.Length}
	lid := schema.Housing.Attr("lid")
	for _, c := range []struct {
		attr       *schema.Attr
		text, want string
	}{
		{temperature, "28C", "28 C"}, {temperature, "20-23 C", "20 to 23 C"}, {temperature, "68 °F – 72 °F", "68 to 72 F"}, {temperature, "28,5 degrees celsius", "28.5 C"},
		{temperature, "between 20 and 23 C", "20 to 23 C"}, {temperature, "20.0 to 23.50 C", "20 to 23.5 C"}, {temperature, "28", ""}, {temperature, "warm", ""}, {temperature, "23 to 20 C", ""},
		{length, "16cm", "16 cm"}, {length, "1/2 in", ""}, {length, "1½ in", ""}, {length, `6"`, "6 in"}, {length, "2 ft", ""}, {length, "1 ft 6 in", ""},
		{&schema.Attr{Kind: schema.Quantity, Dimension: quantity.Volume}, "2 l", "2 L"}, {&schema.Attr{Kind: schema.Quantity, Dimension: quantity.Volume}, "1/3 cup", ""},
		{&schema.Attr{Kind: schema.Quantity, Dimension: quantity.Volume}, "1 cups", "1 cup"},
		{&schema.Attr{Kind: schema.Quantity, Dimension: quantity.Duration}, "two weeks", ""}, {&schema.Attr{Kind: schema.Quantity, Dimension: quantity.Duration}, "half an hour", ""},
		{&schema.Attr{Kind: schema.Quantity, Dimension: quantity.Duration}, "90 mins", "90 min"}, {&schema.Attr{Kind: schema.Range, Dimension: quantity.EnergyDensity}, "5-6 kJ per g", "5 to 6 kJ/g"},
		{&schema.Attr{Kind: schema.Numbers}, "10-35", "10 to 35"}, {&schema.Attr{Kind: schema.Size}, "76x46X41cm", "76 x 46 x 41 cm"}, {&schema.Attr{Kind: schema.Face2D}, `11" by 17"`, "11 x 17 in"},
		{&schema.Attr{Kind: schema.Spans}, "15, 1-12 and 020", "1 to 12, 15, 020"}, {&schema.Attr{Kind: schema.Spans}, "15,1-12", "1 to 12, 15"}, {&schema.Attr{Kind: schema.Spans}, "01-12", "01 to 12"},
		{&schema.Attr{Kind: schema.Every}, "every other day", "2 days"}, {&schema.Attr{Kind: schema.Every}, "Weekly", "week"}, {&schema.Attr{Kind: schema.Every}, "twice a week", ""},
		{&schema.Attr{Kind: schema.Date}, "10 July 2027", "2027-07-10"}, {&schema.Attr{Kind: schema.Date}, "07/08/2027", ""}, {&schema.Attr{Kind: schema.DayOfYear}, "Nov 1st", "1 nov"},
		{&schema.Attr{Kind: schema.Clock}, "7.30", "07:30"}, {&schema.Attr{Kind: schema.Clock}, "1930", "19:30"}, {&schema.Attr{Kind: schema.Clock}, "7:30PM", "7:30 pm"},
		{&schema.Attr{Kind: schema.Clocks}, "8 am", "8:00 am"}, {&schema.Attr{Kind: schema.Clock}, "noon", ""}, {&schema.Attr{Kind: schema.Clock}, "12 noon", ""}, {&schema.Attr{Kind: schema.Clock}, "midday", ""}, {&schema.Attr{Kind: schema.Clock}, "7:30 in the morning", ""}, {&schema.Attr{Kind: schema.Clock}, "3:00", ""},
		{&schema.Attr{Kind: schema.On}, "Tuesdays", "tue"}, {&schema.Attr{Kind: schema.On}, "mon-fri", "mon to fri"}, {&schema.Attr{Kind: schema.On}, "Sat – Mon", "sat to mon"}, {&schema.Attr{Kind: schema.On}, "tue and fri", ""},
		{&schema.Attr{Kind: schema.On}, "weekdays", ""}, {&schema.Attr{Kind: schema.On}, "1st Monday of the month", "first mon"}, {&schema.Attr{Kind: schema.On}, "April 1st", "1 apr"},
		{&schema.Attr{Kind: schema.On}, "24 December until 2 January", "24 dec to 2 jan"}, {&schema.Attr{Kind: schema.On}, "School-Holidays", ""}, {&schema.Attr{Kind: schema.On}, "1/4", ""},
		{lid, "Solid,latched", "solid, latched"}, {lid, "solid,,latched", ""}, {lid, "solid, taped", ""},
		{schema.Housing.Attr("kind"), "Glass", "glass"}, {schema.Collection.Attr("units"), "american", ""}, {schema.Animals.Attr("origin"), "captive-bred", ""},
		{schema.Animals.Attr("count"), "2.1", ""}, {&schema.Attr{Kind: schema.Text}, "28C", ""}, {&schema.Attr{Kind: schema.Cron}, "30 19 * * 1,4", ""},
	} {
		want := c.want
		if want == "" {
			want = c.text
		}
		if got := Spelt(c.attr, c.text); got != want {
			t.Errorf("%q is spelt %q, want %q", c.text, got, want)
		}
		if again := Spelt(c.attr, want); again != want {
			t.Errorf("%q is spelt %q, and that %q", c.text, want, again)
		}
	}
}
