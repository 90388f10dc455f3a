package schema

// Gone says what became of the animals of an enclosure that is no longer kept.
var Gone = &Block{
	Name: "gone", Label: "enclosure",
	Doc:     "An enclosure that is no longer kept, and what became of its animals. Lines of the log about it then count no more, and are not asked about.",
	Example: "gone \"burrow-c\" {\n  because = \"sold to another keeper in May\"\n}",
	Attrs: []Attr{
		{Name: "because", Kind: Text, Required: true, Doc: "What became of them.", Example: `"sold to another keeper in May"`},
		noteAttr,
	},
}
