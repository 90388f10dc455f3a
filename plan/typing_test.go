package plan

import (
	"strings"
	"testing"

	"vivary/plan/finding"
)

// typed is a plan in which nothing is wrong. Each mistake below is one change of it.
const typed = `collection "c" {
  time_zone = "Europe/London"
}

# the room
room "east" {
  temperature = "20 to 23 C"
  humidity    = "40 to 55 %"
}

keeper "lead" { title = "Lead keeper" }

round "evening" {
  at     = "19:30"
  keeper = "lead"
  note   = "quietly, please"
}

enclosure "burrow-a" {
  species = "pandinus-imperator"
  room    = "east"

  housing {
    inside = "60 x 45 x 40 cm"
    lid    = "solid, latched"
    depth  = "16 cm"
    hides  = 1
  }

  animals "adult" {
    count = 1
    stage = "adult"
  }

  feeding "adult" {
    on     = ["tue", "fri"]
    round  = "evening"
    rotate = ["cricket adult", "roach medium"]
  }
}

calendar "evening" {
  rounds = ["evening"]
}
`

// slips are what people mistype: what stands there in place of what, on which line the
// finding is, what it says, and whether its edit gives back the plan as it was.
var slips = []struct {
	name, right, wrong string
	line               int
	says               string
	mends              bool
}{
	{"a text without its second quote", `"20 to 23 C"`, `"20 to 23 C`, 7, "never closed", true},
	{"one before a remark", `"20 to 23 C"`, `"20 to 23 C # warm`, 7, "never closed", false},
	{"one in a block on one line", `"Lead keeper" }`, `"Lead keeper }`, 11, "never closed", true},
	{"a text without its first quote", `"20 to 23 C"`, `20 to 23 C"`, 7, "never opened", true},
	{"a list without one quote", `["tue", "fri"]`, `["tue, "fri"]`, 36, "in this list", true},
	{"one without another", `["tue", "fri"]`, `["tue", fri"]`, 36, "in this list", true},
	{"one without its last", `["tue", "fri"]`, `["tue", "fri]`, 36, "in this list", true},
	{"one without its first", `["tue", "fri"]`, `[tue", "fri"]`, 36, "in this list", true},
	{"a name without its second quote", `enclosure "burrow-a" {`, `enclosure "burrow-a {`, 19, "never closed", true},
	{"a name without its first quote", `enclosure "burrow-a" {`, `enclosure burrow-a" {`, 19, "never opened", true},
	{"an outermost block without its }", "  humidity    = \"40 to 55 %\"\n}\n", "  humidity    = \"40 to 55 %\"\n", 6, "its } is missing", true},
	{"one within without its }", "    hides  = 1\n  }\n", "    hides  = 1\n", 23, "its } is missing", true},
	{"the last one without its }", "  rounds = [\"evening\"]\n}\n", "  rounds = [\"evening\"]\n", 42, "its } is missing", true},
	{"a } too many within", "    hides  = 1\n  }\n", "    hides  = 1\n  }\n  }\n", 29, "one } too many", true},
	{"a } too many outside", "keeper \"lead\" {", "}\nkeeper \"lead\" {", 11, "one } too many", true},
	{"one at the end", "  rounds = [\"evening\"]\n}\n", "  rounds = [\"evening\"]\n}\n}\n", 45, "one } too many", true},
	{"a block without its {", "  housing {\n", "  housing\n", 23, "its { is missing", true},
	{"an outermost one", "round \"evening\" {\n", "round \"evening\"\n", 13, "its { is missing", true},
	{"a { on the next line", "  housing {\n", "  housing\n  {\n", 24, "on its first line", true},
	{"a list without its ]", `["tue", "fri"]`, `["tue", "fri"`, 36, "its ] is missing", true},
	{"the last line of a block without it", `["cricket adult", "roach medium"]`, `["cricket adult", "roach medium"`, 38, "its ] is missing", true},
	{"a list without its [", `["tue", "fri"]`, `"tue", "fri"]`, 36, "square brackets", true},
	{"a list without both", `["tue", "fri"]`, `"tue", "fri"`, 36, "square brackets", true},
	{"no comma", `["tue", "fri"]`, `["tue" "fri"]`, 36, "a comma", true},
	{"a semicolon in a list", `["tue", "fri"]`, `["tue"; "fri"]`, 36, "a comma", true},
	{"two commas", `["tue", "fri"]`, `["tue",, "fri"]`, 36, "means nothing", true},
	{"no =", `stage = "adult"`, `stage "adult"`, 32, "stands =", true},
	{"none before a number", `hides  = 1`, `hides  1`, 27, "stands =", true},
	{"a colon", `stage = "adult"`, `stage: "adult"`, 32, "stands =", true},
	{"a colon behind a blank", `stage = "adult"`, `stage : "adult"`, 32, "stands =", true},
	{"==", `stage = "adult"`, `stage == "adult"`, 32, "stands =", true},
	{"=>", `stage = "adult"`, `stage => "adult"`, 32, "stands =", true},
	{"no value", `stage = "adult"`, `stage =`, 32, "no value", false},
	{"curly quotes", `"adult"` + "\n  }", "“adult”\n  }", 32, "curly", true},
	{"low and high ones", `"adult"` + "\n  }", "„adult“\n  }", 32, "curly", true},
	{"a curly one at the end", `"20 to 23 C"`, `"20 to 23 C”`, 7, "curly", true},
	{"single quotes", `"adult"` + "\n  }", "'adult'\n  }", 32, "double quotes", true},
	{"backticks", `"adult"` + "\n  }", "`adult`\n  }", 32, "double quotes", true},
	{"a name in single quotes", `enclosure "burrow-a"`, `enclosure 'burrow-a'`, 19, "double quotes", true},
	{"a comma at the end", `hides  = 1`, `hides  = 1,`, 27, "end of a line", true},
	{"a semicolon at the end", `stage = "adult"`, `stage = "adult";`, 32, "end of a line", true},
	{"a full stop at the end", `stage = "adult"`, `stage = "adult".`, 32, "means nothing", true},
	{"a comma behind a block", "    hides  = 1\n  }", "    hides  = 1\n  },", 28, "end of a line", true},
	{"two attributes on a line", "count = 1\n    stage", "count = 1 stage", 31, "line of its own", true},
	{"with a comma", "count = 1\n    stage", "count = 1, stage", 31, "line of its own", true},
	{"a } on the line of an attribute", "hides  = 1\n  }", "hides  = 1 }", 27, "line of its own", true},
	{"two } on a line", "    rotate = [\"cricket adult\", \"roach medium\"]\n  }\n}", "    rotate = [\"cricket adult\", \"roach medium\"]\n  } }", 39, "line of its own", false},
	{"an attribute behind {", "  housing {\n    inside", "  housing { inside", 23, "line of its own", true},
	{"two in a block on one line", `{ title = "Lead keeper" }`, `{ title = "Lead keeper" phone = "1" }`, 11, "line of its own", false},
	{"an attribute's name in quotes", `stage = "adult"`, `"stage" = "adult"`, 32, "has no quotes", true},
	{"a block with =", "  housing {", "  housing = {", 23, "no = or :", true},
	{"a block with :", "  housing {", "  housing: {", 23, "no = or :", true},
	{"a named block with =", `animals "adult" {`, `animals "adult" = {`, 30, "no = or :", true},
	{"a name in two words", `time_zone =`, `time zone =`, 2, "one word", true},
	{"a text that goes on", `"quietly, please"`, `"quietly, "please""`, 16, "goes on", false},
	{"a unit outside", `"16 cm"`, `"16" cm`, 26, "goes on", false},
	{"inch marks", `"60 x 45 x 40 cm"`, `24" x 18" x 16"`, 24, "goes on", false},
	{"a text over two lines", `"quietly, please"`, "\"quietly,\n    please\"", 16, "on one line", true},
	{"a text over three lines", `"quietly, please"`, "\"quietly,\n\tplea\n  se\"", 16, "on one line", false},
	{"a text between markers", `"quietly, please"`, "<<END\nquietly, please\nEND", 16, "on one line", false},
	{"a backslash", `"quietly, please"`, `"quietly\please"`, 16, "backslash", false},
	{"a stray character", `hides  = 1`, `hides  = 1 @`, 27, "means nothing", true},
	{"one before a line", `    hides  = 1`, `    @ hides  = 1`, 27, "means nothing", true},
	{"a dash before a line", `    hides  = 1`, `    - hides  = 1`, 27, "means nothing", true},
	{"a remark without #", "# the room", "this is the room", 5, "a remark begins with #", false},
	{"one in a block", "    hides  = 1\n", "    hides  = 1\n    look behind the bark\n", 28, "a remark begins with #", false},
	{"a word alone", "    hides  = 1\n", "    hides  = 1\n    bark\n", 28, "name = value", false},
	{"a comment that never ends", "# the room", "/* the room", 5, "its */ is missing", false},
	{"brackets of another kind", "  housing {", "  housing (", 23, "name = value", false},
	{"an attribute in braces", `"20 to 23 C"`, `{ low = "20 C" }`, 7, "in { }", false},
	{"a blank of a web page", "hides  = 1", "hides\u00a0 = 1", 27, "only looks like one", true},
	{"a number for a name", `enclosure "burrow-a" {`, `enclosure 7a {`, 19, "in quotes", false},
}

// A mistake in the text is said once, on its line, and nothing that follows from it. Its edit
// gives back what was meant.
func TestSlips(t *testing.T) {
	if _, found := load(t, map[string]string{"a.care.hcl": typed}); len(found) > 0 {
		t.Fatal(texts(found))
	}
	for _, x := range slips {
		t.Run(x.name, func(t *testing.T) {
			if !strings.Contains(typed, x.right) {
				t.Fatalf("%q is not in the plan", x.right)
			}
			wrong := strings.Replace(typed, x.right, x.wrong, 1)
			c, found := load(t, map[string]string{"a.care.hcl": wrong})
			if len(found) != 1 {
				t.Fatalf("found %q", texts(found))
			}
			f := found[0]
			if line := c.Files.Start(f.At).Line; f.Rule != ruleSyntax || !strings.Contains(f.Text, x.says) || line != x.line {
				t.Errorf("line %d: %s: %s", line, f.Rule.ID, f.Text)
			}
			mended, err := finding.Apply([]byte(wrong), f.Edits)
			if err != nil {
				t.Fatal(err)
			}
			if x.mends && strings.Join(strings.Fields(string(mended)), " ") != strings.Join(strings.Fields(typed), " ") {
				t.Errorf("it becomes\n%s", mended)
			}
			if len(f.Edits) == 0 {
				if x.mends {
					t.Error("there is no edit")
				}
				return
			}
			if _, after := load(t, map[string]string{"a.care.hcl": string(mended)}); has(after, "syntax") {
				t.Errorf("mended, it has %q:\n%s", texts(after), mended)
			}
		})
	}
}
