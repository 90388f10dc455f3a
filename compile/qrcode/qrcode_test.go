package qrcode

import (
	"bytes"
	"encoding/xml"
	"errors"
	"image"
	"image/color"
	"image/png"
	"io"
	"math/rand/v2"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// scanned returns what zbarimg reads in pictures, by their names.
func scanned(t *testing.T, names []string) map[string]string {
	t.Helper()
	if _, err := exec.LookPath("zbarimg"); err != nil {
		t.Fatal("zbarimg is missing: bash testdata/oracles/setup installs it")
	}
	out := map[string]string{}
	for _, name := range names {
		text, err := exec.Command("zbarimg", "--quiet", "--raw", "-Sdisable", "-Sqrcode.enable", name).Output()
		if err != nil {
			t.Errorf("%s: zbarimg: %v", filepath.Base(name), err)
		}
		out[name] = strings.TrimSuffix(string(text), "\n")
	}
	return out
}

// drawn rasterises an SVG of ours by its path, side squares of it, each so many pixels wide.
func drawn(t *testing.T, svg string, side, pixels int) *image.Gray {
	t.Helper()
	out := image.NewGray(image.Rect(0, 0, side*pixels, side*pixels))
	for i := range out.Pix {
		out.Pix[i] = 255
	}
	paths := regexp.MustCompile(`fill="#000" d="([^"]*)"`).FindStringSubmatch(svg)
	if paths == nil {
		t.Fatalf("no path: %.200s", svg)
	}
	for _, m := range regexp.MustCompile(`M(\d+) (\d+)h(\d+)v1h-(\d+)z`).FindAllStringSubmatch(paths[1], -1) {
		x, _ := strconv.Atoi(m[1])
		y, _ := strconv.Atoi(m[2])
		w, _ := strconv.Atoi(m[3])
		for i := range w * pixels {
			for k := range pixels {
				out.SetGray(x*pixels+i, y*pixels+k, color.Gray{})
			}
		}
	}
	return out
}

func address(n int, r *rand.Rand) string {
	const signs = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789-_~/?=&%.+#"
	b := []byte("https://h.example/")
	for len(b) < n {
		b = append(b, signs[r.IntN(len(signs))])
	}
	return string(b)
}

func TestReaderReadsTheAddress(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 11))
	dir := t.TempDir()
	want := map[string]string{}
	for n := 20; n <= 200; n += 12 {
		for _, wear := range []Wear{Clean, Worn} {
			text := address(n, r)
			c, err := Of(text, wear)
			if err != nil {
				t.Fatal(err)
			}
			picture := drawn(t, c.Screen(1, "x"), c.Modules(), 4)
			if wear == Worn { // a drop of water on a corner of what is read
				blot(picture, 4)
			}
			var b bytes.Buffer
			if err := png.Encode(&b, picture); err != nil {
				t.Fatal(err)
			}
			name := filepath.Join(dir, strconv.Itoa(n)+"-"+strconv.Itoa(int(wear))+".png")
			if err := os.WriteFile(name, b.Bytes(), 0o600); err != nil {
				t.Fatal(err)
			}
			want[name] = text
		}
	}
	var names []string
	for name := range want {
		names = append(names, name)
	}
	for name, got := range scanned(t, names) {
		if got != want[name] {
			t.Errorf("%s is read as %q, and is %q", filepath.Base(name), got, want[name])
		}
	}
}

// blot whitens a square in the middle, a ninth of the side wide.
func blot(p *image.Gray, pixels int) {
	side := p.Rect.Dx()
	from, wide := side/2, side/9/pixels*pixels
	for y := from; y < from+wide; y++ {
		for x := from; x < from+wide; x++ {
			p.SetGray(x, y, color.Gray{Y: 255})
		}
	}
}

func TestQuietZoneIsWhite(t *testing.T) {
	c, err := Of("https://h.example/x", Clean)
	if err != nil {
		t.Fatal(err)
	}
	n := c.Modules()
	for k := range n {
		for edge := range 4 {
			if c.Black(k, edge) || c.Black(edge, k) || c.Black(k, n-1-edge) || c.Black(n-1-edge, k) {
				t.Fatalf("a black square at %d of the quiet zone", k)
			}
		}
	}
	if !c.Black(4, 4) {
		t.Error("the mark of the corner does not begin behind four white squares")
	}
}

// Every square is a whole number of pixels or of printer's dots, and nothing stands in the
// picture that a page without inline styles and scripts would refuse.
func TestWholeSquares(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	width := regexp.MustCompile(`width="([0-9.]+)(mm)?"`)
	for n := 20; n <= 400; n += 19 {
		c, err := Of(address(n, r), Worn)
		if err != nil {
			t.Fatal(err)
		}
		onScreen := c.Screen(280, `to "a" <b> & c`)
		if w, _ := strconv.Atoi(width.FindStringSubmatch(onScreen)[1]); w%c.Modules() != 0 || w > 280 && w != c.Modules() {
			t.Errorf("%d characters: %d pixels for %d squares", n, w, c.Modules())
		}
		printed, readable := c.Print(30, "x")
		mm, _ := strconv.ParseFloat(width.FindStringSubmatch(printed)[1], 64)
		if perSquare := mm / 25.4 * dots / float64(c.Modules()); perSquare-float64(int(perSquare+0.5)) > 0.01 || mm > 30 && perSquare > 1.5 {
			t.Errorf("%d characters: %.3f dots a square, %.1f mm", n, perSquare, mm)
		} else if readable != (perSquare > least-0.5) {
			t.Errorf("%d characters: %.3f dots a square, and readable is %t", n, perSquare, readable)
		}
		for _, svg := range []string{onScreen, printed} {
			if strings.Contains(svg, "style") || strings.Contains(svg, "script") || strings.Contains(svg, "href") {
				t.Errorf("a style, a script or a link: %.300s", svg)
			}
			d := xml.NewDecoder(strings.NewReader(svg))
			for {
				if _, err := d.Token(); errors.Is(err, io.EOF) {
					break
				} else if err != nil {
					t.Fatal(err)
				}
			}
		}
	}
}

func TestNoCode(t *testing.T) {
	for _, text := range []string{"", "https://h.example/a b", "https://h.example/ä", "https://h.example/\n", strings.Repeat("x", 401)} {
		if c, err := Of(text, Clean); err == nil {
			t.Errorf("%.30q has a code of %d squares", text, c.Modules())
		}
	}
}

func TestSameBytes(t *testing.T) {
	a, _ := Of("https://h.example/enclosure/burrow-a", Worn)
	b, _ := Of("https://h.example/enclosure/burrow-a", Worn)
	if a.Screen(200, "x") != b.Screen(200, "x") {
		t.Error("one address is drawn in two ways")
	}
}
