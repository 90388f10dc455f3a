package climate

import (
	"encoding/json"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"vivary/internal/oracles"
)

// TestAgainstPsychrolib compares with npm psychrolib 1.1.1, which is checked
// against ASHRAE's own tables. Its dew point stops at 0.001 K.
func TestAgainstPsychrolib(t *testing.T) {
	cmd := exec.Command("node", filepath.Join("testdata", "psychrolib.js"))
	cmd.Env = append(os.Environ(), "NODE_PATH="+filepath.Join(oracles.Folder(t), "node_modules"))
	cmd.Stderr = os.Stderr
	out, err := cmd.Output()
	if err != nil {
		t.Fatalf("psychrolib did not run: %v; run testdata/oracles/setup", err)
	}
	var rows [][6]float64
	if err := json.Unmarshal(out, &rows); err != nil {
		t.Fatal(err)
	}
	if want := 2 * 46 * 20; len(rows) != want {
		t.Fatalf("%d rows, want %d", len(rows), want)
	}
	bad := 0
	check := func(what string, row [6]float64, got, want, tolerance float64) {
		if !(math.Abs(got-want) <= tolerance) && bad < 10 {
			bad++
			t.Errorf("%s at %g °C, %g %%, %g Pa: %.8g, psychrolib %.8g", what, row[0], row[1], row[2], got, want)
		}
	}
	for _, r := range rows {
		at, rh, p := Celsius(r[0]), Percent(r[1]), Pascal(r[2])
		check("saturation pressure", r, float64(SaturationPressure(at)), r[3], 1e-6*r[3])
		check("dew point", r, float64(DewPoint(at, rh)), r[4], 0.002)
		check("humidity ratio", r, float64(HumidityRatio(at, rh, p)), r[5], 1e-6*r[5])
	}
}

// TestDewPointInverts closes the circle over a wider range than psychrolib's grid.
func TestDewPointInverts(t *testing.T) {
	for at := Celsius(-20); at <= 80; at += 0.7 {
		for rh := Percent(1); rh <= 100; rh += 3 {
			e := VapourPressure(at, rh)
			if back := SaturationPressure(DewPoint(at, rh)); math.Abs(float64(back/e-1)) > 1e-6 {
				t.Fatalf("%g °C %g %%: saturation at the dew point is %g Pa, vapour pressure %g", at, rh, back, e)
			}
		}
	}
	if !math.IsInf(float64(DewPoint(20, 0)), -1) {
		t.Error("dry air has a dew point")
	}
}
