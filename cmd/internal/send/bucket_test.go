//go:build unix

package send

import (
	"bytes"
	"context"
	"testing"

	"github.com/minio/minio-go/v7"
	"github.com/spf13/afero"

	"vivary/cmd/internal/served"
)

// Objects have the headers with which they are handed out; they are compressed only where
// that is asked, and as they are again where it is not any more.
func TestObjectsHaveHeaders(t *testing.T) {
	s := startStore(t)
	all := set("one", "a")
	for i, packed := range []bool{false, true, true, false} {
		to, err := Open("s3://care/house", Access{Disk: afero.NewMemMapFs(), Endpoint: "http://" + s.Address, Region: "us-east-1", Gzip: packed})
		if err != nil {
			t.Fatal(err)
		}
		want := []string{"a new", "a changed", "a unchanged", "a changed"}[i]
		if got := states(published(t, to, all, order(t, all))); got != want {
			t.Errorf("%s, not %s", got, want)
		}
		info, err := to.(*bucket).client.StatObject(context.Background(), "care", "house/a.ics", minio.StatObjectOptions{})
		if err != nil {
			t.Fatal(err)
		}
		text, err := to.Read("a.ics")
		if err != nil {
			t.Fatal(err)
		}
		encoding := ""
		if packed {
			encoding = "gzip"
			if text, err = unpacked(text); err != nil {
				t.Error(err)
			}
		}
		if info.ContentType != served.ContentType || info.Metadata.Get("Cache-Control") != served.CacheControl(all[0].Text) || info.Metadata.Get("Content-Encoding") != encoding {
			t.Errorf("compressed %t: %s, %v", packed, info.ContentType, info.Metadata)
		}
		if !bytes.Equal(text, all[0].Text) {
			t.Errorf("compressed %t: another calendar", packed)
		}
	}
}
