package browser

import (
	"bytes"
	"encoding/base64"
	"encoding/xml"
	"image/color"
	"image/png"
	"io"
	"strings"
	"testing"
)

// caught makes the page keep what it hands over as files, by their names.
const caught = `(() => {
	window.handed = {};
	const blobs = new Map(), make = URL.createObjectURL;
	URL.createObjectURL = (blob) => { const url = make(blob); blobs.set(url, blob); return url; };
	HTMLAnchorElement.prototype.click = function () {
		const name = this.download, reader = new FileReader();
		reader.onload = () => { window.handed[name] = reader.result; };
		reader.readAsDataURL(blobs.get(this.href));
	};
	window.refused = [];
	document.addEventListener("securitypolicyviolation", (event) => window.refused.push(event.blockedURI));
	return true;
})()`

// handed presses a button of the first menu and returns the file that it hands over.
func handed(b *tab, kind string) []byte {
	b.Helper()
	eval[bool](
		b,
		`(document.querySelector(".saves").open = true, document.querySelector("[data-save=`+kind+`]").click(), true)`,
	)
	b.until(`Object.keys(handed).some((name) => name.endsWith(".` + kind + `"))`)
	text := eval[string](b, `Object.entries(handed).find(([name]) => name.endsWith(".`+kind+`"))[1]`)
	_, data, _ := strings.Cut(text, ",")
	raw, err := base64.StdEncoding.DecodeString(data)
	if err != nil {
		b.Fatal(err)
	}
	return raw
}

// A picture is saved as the reader sees it, with its numbers and where it comes from,
// on light ground even for those who read on dark. The page's policy stays as it is.
func TestAPictureIsSaved(t *testing.T) {
	t.Parallel()
	b := open(t, chapter+"#inseam=812&crank-length=170").ready()
	b.dress(390, 844, "dark")
	b.until(`!document.querySelector(".drawing .mark")`)
	says := eval[string](b, `document.querySelector(".drawing desc").textContent`)
	eval[bool](b, caught)
	svg := handed(b, "svg")
	for decoder := xml.NewDecoder(bytes.NewReader(svg)); ; {
		if _, err := decoder.Token(); err == io.EOF {
			break
		} else if err != nil {
			t.Fatalf("the SVG is no XML: %v", err)
		}
	}
	text := string(svg)
	name := eval[string](b, `document.querySelector(".home").textContent`)
	for _, want := range []string{"<title", "<desc", says, name, server.URL + chapter, `stroke="rgb(`} {
		if !strings.Contains(text, want) {
			t.Errorf("the SVG lacks %q", want)
		}
	}
	for _, not := range []string{"class=", "style=", "#inseam", "var("} {
		if strings.Contains(text, not) {
			t.Errorf("the SVG has %q, which says nothing outside the page or tells the reader's numbers", not)
		}
	}
	picture, err := png.Decode(bytes.NewReader(handed(b, "png")))
	if err != nil {
		t.Fatal(err)
	}
	size := picture.Bounds()
	if size.Dx() < 1200 {
		t.Errorf("the PNG is only %d pixels wide", size.Dx())
	}
	inked, hot := 0, 0
	for y := 0; y < size.Dy(); y++ {
		for x := 0; x < size.Dx(); x++ {
			c := color.RGBAModel.Convert(picture.At(x, y)).(color.RGBA)
			if x == 0 && c != (color.RGBA{255, 255, 255, 255}) {
				t.Fatalf("the ground at %d %d is %v, not white", x, y, c)
			}
			if c.R < 100 {
				inked++
			}
			if c == (color.RGBA{0xb8, 0x38, 0x0f, 255}) { // --hot on light ground
				hot++
			}
		}
	}
	if share := float64(inked) / float64(size.Dx()*size.Dy()); share < 0.01 || share > 0.3 {
		t.Errorf("%.1f %% of the PNG is dark", 100*share)
	}
	if hot < 200 {
		t.Errorf("only %d pixels of the PNG are of the hot colour", hot)
	}
	if refused := eval[[]string](b, `window.refused`); len(refused) > 0 {
		t.Errorf("the page's policy refused %v", refused)
	}
}
