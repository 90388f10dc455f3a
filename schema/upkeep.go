package schema

// Upkeep is something that is done for a feeder animal while it is kept or bred.
var Upkeep = &Block{
	Name: "upkeep", Label: "name",
	Doc:     "Something that is done for a feeder animal itself, in the tubs and cultures of it. A sheet without any has what most feeders have: food and water gel every 2 days, wet food out the next day, the dead and the frass out every 7 days. Where it has some for tubs, or for cultures, they are all that is done there.",
	Example: "upkeep \"look\" {\n  task    = \"Look for mites and mould\"\n  every   = \"3 days\"\n  in      = [\"culture\"]\n  source  = [\"own records\"]\n  quality = \"own\"\n  seen    = \"2026-11-30\"\n}",
	Attrs: join([]Attr{
		{Name: "task", Kind: Text, Required: true, Doc: "What to do, as it stands in a round.", Example: `"Look for mites and mould"`},
		{Name: "every", Kind: Every, Required: true, Doc: "How often.", Example: `"3 days"`},
		{Name: "in", Kind: Words, Choices: UpkeepIn, Default: "both", Doc: "Where it is done.", Example: `["culture"]`},
		{Name: "wet", Kind: Truth, Default: "false", Doc: "Whether wet food is given with it, which is taken out the next day.", Example: `true`},
		{Name: "cleans", Kind: Truth, Default: "false", Doc: "Whether it is cleaning, and not food or water: the log calls it `feeder-clean` then, and else `feeder-care`.", Example: `true`},
		noteAttr,
	}, sourceAttrs),
}

// UpkeepIn are where feeder animals are looked after.
var UpkeepIn = choices(
	InTub, "a box in which they are kept",
	InCulture, "a box or jar in which they breed",
)

// Where feeder animals are looked after.
const (
	InTub     = "tub"
	InCulture = "culture"
)
