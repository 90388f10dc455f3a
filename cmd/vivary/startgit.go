package main

import (
	"fmt"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/afero"
)

// forGit are files that git reads, for a collection that is kept in it. In a folder without
// git they mean nothing, and in one of a larger repository they are about this folder alone.
var forGit = []firstFile{
	{".gitattributes", `# How git treats the files of this collection.

# What two people appended to one log is kept from both, without a conflict.
*.care.log text eol=lf merge=union

# Above each change of a plan git names the enclosure. To have it name the care:
#   git config diff.care.xfuncname '^ *([a-z_]+( "[^"]*")? *\{.*)$'
*.care.hcl text eol=lf diff=care

# Calendars are kept to the byte. After a merge a build makes them anew, never git.
*.ics -text -diff -merge
`},
	{".gitignore", `# The calendars in feeds are not left out: they are the memory of which animals there
# were, and of what phones were told.

# What is there only while vivary writes.
.vivary-lock
.vivary-switch
.*.new

# Private addresses.
*.keys

# Logs and plans are kept, whatever a folder above says of *.log.
!*.care.log
!*.care.hcl
`},
}

// sayForGit says which lines are lacking in those files that the keeper has already: they
// are the keeper's own, and nothing is written into them.
func sayForGit(out io.Writer, disk afero.Fs, root string) {
	for _, x := range forGit {
		path := filepath.Join(root, x.name)
		there, err := afero.ReadFile(disk, path)
		if err != nil {
			there = nil // a folder, or not to be read: all of them are named
		}
		has := map[string]bool{}
		for line := range strings.Lines(string(there)) {
			has[strings.TrimSpace(line)] = true
		}
		lacking := ""
		for line := range strings.Lines(x.text) {
			if line = strings.TrimSpace(line); line != "" && line[0] != '#' && !has[line] {
				lacking += "  " + line + "\n"
			}
		}
		if lacking != "" {
			fmt.Fprintf(out, "\n%s is yours, and stays as it is. For a collection in git, add to it:\n%s", filepath.ToSlash(path), lacking)
		}
	}
}
