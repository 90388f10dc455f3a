package editor

import (
	"compress/gzip"
	"encoding/json"
	"os"
	"testing"
)

// TestMethods holds what is answered against the published meta model: each is something that
// an editor asks or tells.
func TestMethods(t *testing.T) {
	f, err := os.Open("../../../testdata/protocol/metaModel.json.gz")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	z, err := gzip.NewReader(f)
	if err != nil {
		t.Fatal(err)
	}
	type message struct {
		Method    string `json:"method"`
		Direction string `json:"messageDirection"`
		Since     string `json:"since"`
	}
	var m struct{ Requests, Notifications []message }
	if err := json.NewDecoder(z).Decode(&m); err != nil {
		t.Fatal(err)
	}
	known := map[string]bool{}
	for _, x := range append(m.Requests, m.Notifications...) {
		known[x.Method] = x.Direction != "serverToClient" && x.Since != "3.18.0"
	}
	for method := range newServer(Options{}).methods() {
		if !known[method] {
			t.Errorf("an editor does not say %s", method)
		}
	}
}
