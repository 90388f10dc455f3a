package send

import "vivary/cmd/internal/served"

// Target is a place from which calendars are served. What stands in it is always whole:
// whoever reads it all the while sees a file as it was, or as it is now.
type Target interface {
	// Forms are the forms in which it stores a calendar.
	Forms() []Form
	// Hold keeps other publishes away until it is let go, where the target can be held.
	Hold() (release func(), err error)
	// List returns the mark of each file that stands where calendars are put, by its path.
	// A file that is stored again has another mark.
	List() (map[string]string, error)
	// Read returns what stands under a path; nil for nothing.
	Read(path string) ([]byte, error)
	// Put stores files, in their order. It tells which one it is sending, and of which one
	// it has come to stand there, with its mark.
	Put(files []File, sending func(i int), stored func(i int, mark string)) error
	// Remove takes a file away. One that is not there is no error.
	Remove(path string) error
	// Remarks are what is to be known of how it stores things.
	Remarks() []string
	Close() error
}

// Form is a form in which a calendar is stored.
type Form struct {
	Suffix   string // of its name
	Packed   bool   // its bytes are compressed by gzip
	Encoding string // what is said of that when it is served from there
}

// File is a file to be stored.
type File struct {
	Path, Type, Cache, Encoding string
	Text                        []byte
}

// entry is what the manifest says of a file once it stands, but for its mark.
func (f *File) entry() entry {
	return entry{
		Path: sum([]byte(f.Path)), Name: nameOf(f.Path), Type: f.Type, Cache: f.Cache,
		Encoding: f.Encoding, Bytes: len(f.Text), Sum: sum(f.Text),
	}
}

// files are the files of a calendar that is put under a path.
func files(forms []Form, path string, text []byte) (all []File) {
	for _, form := range forms {
		f := File{path + form.Suffix, served.ContentType, served.CacheControl(text), form.Encoding, text}
		if form.Packed {
			f.Text = served.Gzip(text)
		}
		all = append(all, f)
	}
	return all
}
