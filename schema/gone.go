package schema

// Gone says where animals went that the plan had.
var Gone = &Block{
	Name: "gone", Label: "enclosure",
	Doc:     "Animals that the plan had and no longer has, and what became of them: those of an enclosure whose block was taken out, or some of one that is still there. The last calendars tell how many lived where; a plan that has fewer is refused until something says why. What was logged (`died`, `moved`, `sold`) does, and needs no such block. It is for a plan without a log, for a number that was written wrongly, and for an enclosure that is no longer kept while lines about it stand in the log.",
	Example: "gone \"burrow-c\" {\n  because = \"sold to another keeper in May\"\n}\n\ngone \"burrow-a\" {\n  animals = 1\n  because = \"12 was a slip of the pen for 11\"\n}",
	Attrs: []Attr{
		{Name: "animals", Kind: Whole, Default: "all that lived there", Doc: "How many, of an enclosure that is still in the plan.", Example: `1`},
		{Name: "because", Kind: Text, Required: true, Doc: "What became of them.", Example: `"sold to another keeper in May"`},
		noteAttr,
	},
}
