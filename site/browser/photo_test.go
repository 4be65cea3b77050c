package browser

import (
	"bytes"
	"context"
	"encoding/binary"
	"encoding/json"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"math"
	"net/http"
	"net/http/httptest"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

const kneeChapter = "/saddle/checking-the-knee.html"

// spot is a place on a photo, in its pixels.
type spot struct{ x, y float64 }

func (a spot) to(b spot) float64 { return math.Hypot(b.x-a.x, b.y-a.y) }

// bent is the knee's bend by the law of cosines (Euclid, Elements II.12 and 13):
// the page's own way is by the two products of the limbs' directions.
func bent(hip, knee, ankle spot) float64 {
	a, b, c := hip.to(knee), knee.to(ankle), hip.to(ankle)
	return 180 - 180/math.Pi*math.Acos(math.Min(1, math.Max(-1, (a*a+b*b-c*c)/(2*a*b))))
}

// margin is the bend's ± where each coordinate of each point may be off by that
// many pixels: central differences put together as JCGM 100:2008, 5.1.2 says.
func margin(off [3]float64, points ...spot) float64 {
	sum := 0.0
	for i := range points {
		for _, step := range []spot{{0.01, 0}, {0, 0.01}} {
			up, down := slices.Clone(points), slices.Clone(points)
			up[i] = spot{points[i].x + step.x, points[i].y + step.y}
			down[i] = spot{points[i].x - step.x, points[i].y - step.y}
			d := (bent(up[0], up[1], up[2]) - bent(down[0], down[1], down[2])) / 0.02 * off[i]
			sum += d * d
		}
	}
	return math.Sqrt(sum)
}

// The rider of the test's photo, 1600 by 1200: the stickers lie here.
var stickers = [3]spot{{620, 260}, {860, 600}, {830, 1010}}

var inks = [3]color.RGBA{{200, 40, 40, 255}, {40, 150, 60, 255}, {50, 70, 210, 255}}

// scene is a grey photo with three round stickers on it, larger by a factor.
func scene(times int) *image.RGBA {
	m := image.NewRGBA(image.Rect(0, 0, 1600*times, 1200*times))
	for y := range 1200 * times {
		for x := range 1600 * times {
			g := uint8(150 + (x/times/40+y/times/40)%2*20)
			m.SetRGBA(x, y, color.RGBA{g, g, g, 255})
		}
	}
	for i, s := range stickers {
		r := 12 * times
		for y := -r; y <= r; y++ {
			for x := -r; x <= r; x++ {
				if x*x+y*y <= r*r {
					m.SetRGBA(int(s.x)*times+x, int(s.y)*times+y, inks[i])
				}
			}
		}
	}
	return m
}

// keep writes a file for this test and returns its path.
func keep(t testing.TB, name string, data []byte) string {
	t.Helper()
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
	return path
}

func asPNG(t testing.TB, m image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := (&png.Encoder{CompressionLevel: png.BestSpeed}).Encode(&b, m); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// asJPEG is a JPEG, with Exif saying how it is to be turned where that is not 0.
func asJPEG(t testing.TB, m image.Image, turned byte) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, m, &jpeg.Options{Quality: 85}); err != nil {
		t.Fatal(err)
	}
	if turned == 0 {
		return b.Bytes()
	}
	// TIFF 6.0: one directory with the one entry Orientation (274), a short.
	exif := append([]byte("Exif\x00\x00MM\x00*\x00\x00\x00\x08\x00\x01\x01\x12\x00\x03\x00\x00\x00\x01\x00"),
		turned, 0, 0, 0, 0, 0, 0)
	out := binary.BigEndian.AppendUint16([]byte{0xff, 0xd8, 0xff, 0xe1}, uint16(len(exif)+2))
	return slices.Concat(out, exif, b.Bytes()[2:])
}

// reader opens the chapter and the sheet on which a photo is read.
func reader(t *testing.T, hash string, before ...chromedp.Action[chromedp.Void]) *tab {
	t.Helper()
	b := open(t, kneeChapter+hash, before...).ready()
	b.until(`document.querySelector(".off-photo")`)
	// The answer's strip lies over the lower end of a phone's window.
	eval[bool](
		b,
		`(document.querySelector(".off-photo").scrollIntoView({block: "center", behavior: "instant"}), true)`,
	)
	b.do(chromedp.Click(chromedp.CSS(".off-photo")))
	b.until(`document.querySelector("dialog.photo")?.open`)
	return b
}

// pick gives the sheet a photo and waits until it lies there.
func (b *tab) pick(path string) *tab {
	b.Helper()
	b.do(chromedp.SetUploadFiles(chromedp.CSS("#photo-file"), []string{path}))
	b.until(`document.querySelector(".photo .whole").checkVisibility()`)
	return b
}

// shown is where the photo lies in the window: its left and top, its scale.
func (b *tab) shown() (left, top, scale float64) {
	b.Helper()
	r := eval[[]float64](
		b,
		`(() => { const c = document.querySelector(".photo .whole canvas"),
			r = c.getBoundingClientRect();
			return [r.left, r.top, r.width, r.height, c.width, c.height] })()`,
	)
	scale = math.Min(r[2]/r[4], r[3]/r[5])
	return r[0] + (r[2]-scale*r[4])/2, r[1] + (r[3]-scale*r[5])/2, scale
}

// click clicks a place of the photo, at a whole pixel of the window, and returns
// the place that was hit.
func (b *tab) click(s spot) spot {
	b.Helper()
	eval[bool](b, `(document.querySelector(".photo .whole").scrollIntoView({block: "center"}), true)`)
	left, top, scale := b.shown()
	x, y := math.Round(left+scale*s.x), math.Round(top+scale*s.y)
	b.do(chromedp.MouseClickXY(x, y))
	return spot{(x - left) / scale, (y - top) / scale}
}

// told is the angle and its ± as the sheet tells them.
func (b *tab) told() (angle, margin float64) {
	b.Helper()
	text := b.text(".photo [role=status]")
	if _, err := fmt.Sscanf(text, "Knee bend %f° ± %f°", &angle, &margin); err != nil {
		b.Fatalf("the sheet says %q", text)
	}
	return angle, margin
}

// close by one decimal, as both are shown with one.
func (b *tab) near(what string, got, want float64) {
	b.Helper()
	if math.IsNaN(got) || math.Abs(got-want) > 0.051 {
		b.Errorf("%s is %.1f, and %.3f was computed", what, got, want)
	}
}

func TestAKneeIsReadOffAPhotoAndUsed(t *testing.T) {
	t.Parallel()
	b := reader(t, "#inseam=830&saddle-height=735").pick(keep(t, "knee.png", asPNG(t, scene(1))))
	if got := b.text(".photo [role=status]"); got != "Click the hip." {
		t.Errorf("before a click the sheet says %q", got)
	}
	if !eval[bool](b, `document.querySelector(".photo .take").disabled`) {
		t.Error("without points there is something to use")
	}
	var hit [3]spot
	for i, s := range stickers {
		hit[i] = b.click(s)
	}
	angle, off := b.told()
	_, _, scale := b.shown()
	b.near("the angle", angle, bent(hit[0], hit[1], hit[2]))
	rough := math.Max(1, 3/scale)
	b.near("the ±", off, margin([3]float64{rough, rough, rough}, hit[:]...))
	if truth := bent(stickers[0], stickers[1], stickers[2]); math.Abs(angle-truth) > off {
		t.Errorf("%.1f ± %.1f does not hold the %.2f of the stickers", angle, off, truth)
	}
	if hash := eval[string](b, "location.hash"); strings.Contains(hash, "knee") {
		t.Errorf("before it is used the record is %s", hash)
	}
	// How it was read is the reader's to say.
	b.do(chromedp.Click(chromedp.CSS(".photo .take")))
	if got := b.text(".photo [role=status]"); got != "Say first how the knee was read." {
		t.Errorf("the sheet says %q", got)
	}
	b.do(
		chromedp.Click(chromedp.CSS(`.photo [value=moving]`)),
		chromedp.Click(chromedp.CSS(".photo .end [type=checkbox]")),
	)
	added, _ := b.told()
	b.near("the angle with what side film lacks", added, bent(hit[0], hit[1], hit[2])+2.2)
	b.do(chromedp.Click(chromedp.CSS(".photo .end [type=checkbox]")), chromedp.Click(chromedp.CSS(".photo .take")))
	b.until(
		fmt.Sprintf(`location.hash.includes("knee-reading=%g") && location.hash.includes("knee-read=moving")`, angle),
	)
	if got := eval[string](b, `document.activeElement.name + " " + document.activeElement.value`); got != fmt.Sprintf(
		"knee-reading %.1f",
		angle,
	) {
		t.Errorf("the field holds %q", got)
	}
	if eval[bool](b, `document.querySelector("dialog.photo").open`) {
		t.Error("the sheet is still open")
	}
	b.until(fmt.Sprintf(`document.querySelector(".answer").textContent.includes("%.1f")`, angle))
}

func TestAKneeIsReadOffAPhotoByKeys(t *testing.T) {
	t.Parallel()
	b := reader(t, "").pick(keep(t, "knee.png", asPNG(t, scene(1))))
	eval[bool](b, `(document.querySelector("#photo-file").focus(), true)`)
	press := func(key string, times int, shift bool) {
		t.Helper()
		options := []chromedp.KeyOption{}
		if shift {
			options = append(options, chromedp.KeyModifiers(chromedp.ModifierShift))
		}
		for range times {
			b.do(chromedp.KeyEvent(key, options...))
		}
	}
	press(kb.Tab, 1, false)
	var at [3]spot
	for i, s := range stickers {
		if got := eval[string](b, "document.activeElement.ariaLabel"); got != []string{"Hip", "Knee", "Ankle"}[i] {
			t.Fatalf("the keys are at %q", got)
		}
		at[i] = b.cross(i)
		for _, way := range []struct {
			less, more string
			by         float64
		}{{kb.ArrowLeft, kb.ArrowRight, s.x - at[i].x}, {kb.ArrowUp, kb.ArrowDown, s.y - at[i].y}} {
			key := way.more
			if way.by < 0 {
				key = way.less
			}
			press(key, int(math.Abs(way.by))/10, true)
			press(key, int(math.Abs(way.by))%10, false)
		}
		if got := b.cross(i); got != s {
			t.Fatalf("the cross is at %v, not at %v", got, s)
		}
		if strings.Contains(b.text(".photo [role=status]"), "Knee bend") {
			t.Fatal("a point counts before it is placed")
		}
		press(kb.Enter, 1, false)
	}
	angle, off := b.told()
	b.near("the angle", angle, bent(stickers[0], stickers[1], stickers[2]))
	_, _, scale := b.shown()
	fine := math.Max(1, 3/math.Max(1, 4*scale))
	b.near("the ±", off, margin([3]float64{fine, fine, fine}, stickers[:]...))
	// Back to the knee, and a nudge.
	press(kb.Tab, 1, true)
	press(kb.ArrowRight, 3, false)
	press(kb.ArrowDown, 1, true)
	angle, _ = b.told()
	b.near("the angle after a nudge", angle, bent(stickers[0], spot{stickers[1].x + 3, stickers[1].y + 10},
		stickers[2]))
	press(kb.Escape, 1, false)
	b.until(`!document.querySelector("dialog.photo").open && document.activeElement.className === "off-photo"`)
}

// inkAt is the colour of a place on one of the sheet's canvases, read off a copy.
func (b *tab) inkAt(canvas string, x, y float64) [3]float64 {
	b.Helper()
	return [3]float64(
		eval[[]float64](
			b,
			fmt.Sprintf(
				`(() => { const c = %s, one = document.createElement("canvas");
					one.width = one.height = 1; const ink = one.getContext("2d");
					ink.drawImage(c, -Math.floor(%g * c.width), -Math.floor(%g * c.height));
					return [...ink.getImageData(0, 0, 1, 1).data].slice(0, 3) })()`,
				canvas,
				x,
				y,
			),
		),
	)
}

// alike tells whether a colour is that ink, give or take what JPEG does.
func alike(got [3]float64, want color.RGBA) bool {
	return math.Abs(got[0]-float64(want.R)) < 20 && math.Abs(got[1]-float64(want.G)) < 20 &&
		math.Abs(got[2]-float64(want.B)) < 20
}

// cross is where the cross of a point is said to be.
func (b *tab) cross(i int) (s spot) {
	b.Helper()
	text := eval[string](b, fmt.Sprintf(`document.querySelectorAll(".photo .aim")[%d].ariaValueText`, i))
	if _, err := fmt.Sscanf(strings.TrimPrefix(text, "not placed, "), "%f across, %f down", &s.x, &s.y); err != nil {
		b.Fatalf("%q: %v", text, err)
	}
	return s
}

// A thumb places roughly and then slides the detail under the cross.
func TestADetailIsSlidUnderItsCrossOnAPhone(t *testing.T) {
	t.Parallel()
	b := reader(t, "", chromedp.EmulateViewport(390, 844)).pick(keep(t, "knee.png", asPNG(t, scene(1))))
	for _, s := range stickers {
		b.click(spot{s.x + 25, s.y - 20})
	}
	_, before := b.told()
	for i, s := range stickers {
		for range 2 {
			c := b.cross(i)
			box := eval[[]float64](
				b,
				fmt.Sprintf(
					`(() => { const a = document.querySelectorAll(".photo .aim")[%d];
						a.scrollIntoView({block: "center"});
						const r = a.getBoundingClientRect();
						return [r.left + r.width / 2, r.top + r.height / 2] })()`,
					i,
				),
			)
			_, _, scale := b.shown()
			detail := math.Max(1, 4*scale)
			dx, dy := math.Round((c.x-s.x)*detail), math.Round((c.y-s.y)*detail)
			b.do(chromedp.MouseEvent(chromedp.MousePressed, box[0], box[1], chromedp.ButtonLeft),
				chromedp.MouseEvent(chromedp.MouseMoved, box[0]+dx/2, box[1]+dy/2, chromedp.ButtonLeft),
				chromedp.MouseEvent(chromedp.MouseMoved, box[0]+dx, box[1]+dy, chromedp.ButtonLeft),
				chromedp.MouseEvent(chromedp.MouseReleased, box[0]+dx, box[1]+dy, chromedp.ButtonLeft))
		}
		if got := b.cross(i); got.to(s) > 2 {
			t.Errorf("the cross is at %v, the sticker at %v", got, s)
		}
		// The middle of the detail shows the sticker's ink.
		if got := b.inkAt(fmt.Sprintf(`document.querySelectorAll(".photo .aim canvas")[%d]`, i), 0.5, 0.5); !alike(
			got,
			inks[i],
		) {
			t.Errorf("in the middle of detail %d lies %v, not %v", i, got, inks[i])
		}
	}
	angle, after := b.told()
	if truth := bent(stickers[0], stickers[1], stickers[2]); math.Abs(angle-truth) > 0.5 {
		t.Errorf("%.1f was read, and the stickers say %.2f", angle, truth)
	}
	if after > before/2 {
		t.Errorf("the ± went from %.1f to %.1f only", before, after)
	}
	// A click on a point takes it up, the next one moves it.
	b.click(stickers[0])
	if got := b.cross(0); got.to(stickers[0]) > 2 || eval[string](b, "document.activeElement.ariaLabel") != "Hip" {
		t.Error("a click on the hip moved it or did not take it up")
	}
	hit := b.click(spot{stickers[0].x - 60, stickers[0].y})
	if got := b.cross(0); got.to(hit) > 1 {
		t.Errorf("the hip went to %v, not to %v", got, hit)
	}
}

func TestWhatIsNoPhotoIsRefusedWithAReason(t *testing.T) {
	t.Parallel()
	huge := image.NewPaletted(image.Rect(0, 0, 12000, 9000), color.Palette{color.Black, color.White})
	photo := asPNG(t, scene(1))
	for _, c := range []struct {
		name string
		data []byte
		says string
	}{
		{"notes.txt", []byte("The knee was read at 27 degrees on the stand, three times over."),
			"“notes.txt” is no photo that this page can open. It opens JPEG, PNG and WebP"},
		{"renamed.png", []byte("Not a photo at all, whatever its name may say about it."), "is no photo"},
		{"empty.jpg", nil, "is no photo"},
		{"dot.png", asPNG(t, image.NewGray(image.Rect(0, 0, 1, 1))), "has 1 by 1 pixels, too few"},
		{"strip.png", asPNG(t, image.NewGray(image.Rect(0, 0, 9000, 120))), "has 9000 by 120 pixels, too few"},
		{"huge.png", asPNG(t, huge), "has 12000 by 9000 pixels, more than the 64 million that this page opens. " +
			"Save a smaller copy"},
		{"torn.png", photo[:200], "could not be opened. It may be damaged"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b := reader(t, "").pick(keep(t, "knee.png", photo))
			b.do(chromedp.SetUploadFiles(chromedp.CSS("#photo-file"), []string{keep(t, c.name, c.data)}))
			b.until(`document.querySelector(".photo .wrong").textContent`)
			if got := b.text(".photo .wrong"); !strings.Contains(got, c.says) {
				t.Errorf("it says %q", got)
			}
			if eval[bool](
				b,
				`document.querySelector(".photo .work").checkVisibility() ||
					document.querySelector(".photo .end").checkVisibility() ||
					document.querySelector(".photo canvas").width > 1`,
			) {
				t.Error("the photo before it is still there")
			}
			b.pick(keep(t, "again.png", photo))
			if got := b.text(".photo .wrong"); got != "" {
				t.Errorf("beside a good photo stands %q", got)
			}
		})
	}
}

// A large photo taken upright: it is decoded small, and stands upright.
func TestALargePhotoIsMadeSmallAndStandsUpright(t *testing.T) {
	t.Parallel()
	m := scene(3)
	for name, turned := range map[string]byte{"as it is": 0, "turned by a quarter": 6} {
		t.Run(name, func(t *testing.T) {
			b := reader(t, "").pick(keep(t, "knee.jpg", asJPEG(t, m, turned)))
			at := stickers
			wide, high := 1600.0, 1200.0
			if turned == 6 {
				// Exif 6: what is stored at the left is seen at the top.
				for i, s := range stickers {
					at[i] = spot{1200 - s.y, s.x}
				}
				wide, high = high, wide
			}
			size := eval[[]float64](
				b,
				`[document.querySelector(".photo .whole canvas").width,
					document.querySelector(".photo .whole canvas").height]`,
			)
			if math.Max(size[0], size[1]) != 1600 || math.Abs(size[0]/size[1]-wide/high) > 0.002 {
				t.Fatalf("the copy has %v pixels", size)
			}
			for i, s := range at {
				if got := b.inkAt(`document.querySelector(".photo .whole canvas")`, s.x/wide, s.y/high); !alike(
					got,
					inks[i],
				) {
					t.Errorf("at sticker %d lies %v, not %v", i, got, inks[i])
				}
				b.click(s)
			}
			angle, off := b.told()
			if truth := bent(stickers[0], stickers[1], stickers[2]); math.Abs(angle-truth) > off {
				t.Errorf("%.1f ± %.1f was read, and the stickers say %.2f", angle, off, truth)
			}
		})
	}
}

// The three kinds of WebP (RFC 9649) as Chromium itself writes them, and a JPEG
// by Go: the size is read before anything is decoded.
func TestSizesAreReadFromTheFirstBytes(t *testing.T) {
	t.Parallel()
	b := reader(t, "")
	written := `(async (kind, quality, clear) => {
		const c = document.createElement("canvas"); c.width = 311; c.height = 173;
		const ink = c.getContext("2d"); ink.fillStyle = clear ? "#06606066" : "teal";
		ink.fillRect(0, 0, clear ? 200 : 311, 173);
		const blob = await new Promise((done) => c.toBlob(done, kind, quality));
		const { size } = await import(new URL("photofile.js", document.querySelector("script[src$='page.js']").src));
		const name = async (at) => new TextDecoder().decode(await blob.slice(at, at + 4).arrayBuffer());
		const found = [[await name(12), ...await size(blob)]];
		// The picture inside an extended file is a simple file of its own.
		for (let at = 12; await name(0) === "RIFF" && at < blob.size;) {
			const chunk = await name(at),
				long = new DataView(await blob.slice(at + 4, at + 8).arrayBuffer()).getUint32(0, true);
			if (chunk === "VP8 " || chunk === "VP8L")
				found.push([chunk, ...await size(new Blob([blob.slice(0, 12), blob.slice(at)]))]);
			at += 8 + long + long % 2;
		}
		return JSON.stringify(found);
	})`
	kinds := map[string]bool{}
	for _, how := range []string{`"image/webp", 0.5, false`, `"image/webp", 1, false`, `"image/webp", 0.5, true`,
		`"image/png"`, `"image/jpeg", 0.7`} {
		var got [][]any
		if err := json.Unmarshal([]byte(eval[string](b, written+"("+how+")", chromedp.EvalAwaitPromise)),
			&got); err != nil {
			t.Fatal(err)
		}
		for _, file := range got {
			kinds[file[0].(string)] = true
			if file[1] != 311.0 || file[2] != 173.0 {
				t.Errorf("%s: %v", how, file)
			}
		}
	}
	if !kinds["VP8 "] || !kinds["VP8L"] || !kinds["VP8X"] {
		t.Errorf("only the kinds %v were written", kinds)
	}
}

// Nothing but the modules is asked for, nothing is stored, the address is left
// alone; and all of it is gone when the reader's numbers are forgotten.
func TestAPhotoGoesNowhere(t *testing.T) {
	t.Parallel()
	var mu sync.Mutex
	var asked []string
	listen := chromedp.Func(func(ctx context.Context, _ *chromedp.Target) error {
		requests := chromedp.Events(ctx, network.RequestWillBeSent)
		go func() {
			for r, err := range requests {
				if err != nil {
					return
				}
				mu.Lock()
				asked = append(asked, r.Request.Method+" "+r.Request.URL[strings.LastIndex(r.Request.URL, "/")+1:])
				mu.Unlock()
			}
		}()
		return nil
	})
	b := open(t, kneeChapter+"#inseam=830", listen).ready()
	eval[bool](b, `(document.querySelector("[data-tools] [type=checkbox]").click(), true)`)
	b.until(`localStorage.length === 1`)
	mu.Lock()
	if all := strings.Join(asked, " "); strings.Contains(all, "photo") || strings.Contains(all, "bend.js") {
		t.Errorf("without a wish for it the page loaded %v", asked)
	}
	asked = nil
	mu.Unlock()
	before := eval[string](b, `JSON.stringify([localStorage, sessionStorage, location.href, document.cookie])`)
	b.do(chromedp.Click(chromedp.CSS(".off-photo")))
	b.until(`document.querySelector("dialog.photo")?.open`)
	b.pick(keep(t, "knee.png", asPNG(t, scene(1))))
	for _, s := range stickers {
		b.click(s)
	}
	b.told()
	after := eval[string](b, `JSON.stringify([localStorage, sessionStorage, location.href, document.cookie])`)
	if after != before {
		t.Errorf("%s became %s", before, after)
	}
	stored := eval[[]int](
		b,
		`Promise.all([indexedDB.databases(), caches.keys()]).then((all) => all.map((list) => list.length))`,
		chromedp.EvalAwaitPromise,
	)
	if !slices.Equal(stored, []int{0, 0}) {
		t.Errorf("databases and caches: %v", stored)
	}
	mu.Lock()
	slices.Sort(asked)
	// The page's other pictures are drawn, and its words marked, whenever it is idle.
	asked = slices.DeleteFunc(asked, func(a string) bool { return a == "GET plates.js" || a == "GET words.json" })
	if want := []string{"GET bend.js", "GET photo.js", "GET photofile.js"}; !slices.Equal(asked, want) {
		t.Errorf("the photo made the page ask for %v", asked)
	}
	mu.Unlock()
	b.do(chromedp.KeyEvent(kb.Escape))
	b.until(`!document.querySelector("dialog.photo").open`)
	eval[bool](b, `(location.hash = "#stature=1740", true)`) // somebody else's numbers
	// The form is written anew, and the button with it: an early click would hit the old one.
	b.until(`document.querySelector("[name=inseam]").value === "" && document.querySelector(".off-photo")`)
	b.do(chromedp.Click(chromedp.CSS(".off-photo")))
	b.until(`document.querySelector("dialog.photo").open`)
	if eval[bool](
		b,
		`document.querySelector(".photo canvas").width > 1 ||
			document.querySelector("#photo-file").files.length > 0 ||
			document.querySelector(".photo .work").checkVisibility()`,
	) {
		t.Error("the photo outlives the numbers")
	}
}

func TestThePhotoIsOfferedOnlyWhereAKneeIsRead(t *testing.T) {
	t.Parallel()
	if eval[bool](open(t, chapter).ready(), `!!document.querySelector(".off-photo")`) {
		t.Error("saddle height offers to read a knee")
	}
	off := chromedp.Func(func(ctx context.Context, t *chromedp.Target) error {
		_, err := chromedp.Call(ctx, emulation.SetScriptExecutionDisabled,
			emulation.SetScriptExecutionDisabledParams{Value: true})
		return err
	})
	if eval[bool](open(t, kneeChapter, off), `!!document.querySelector(".off-photo")`) {
		t.Error("a button that needs script stands there without")
	}
}

func TestAPhotoReaderThatDoesNotLoadSaysSo(t *testing.T) {
	t.Parallel()
	without := httptest.NewServer(http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		if strings.HasSuffix(r.URL.Path, "/photo.js") {
			http.NotFound(w, r)
			return
		}
		server.Config.Handler.ServeHTTP(w, r)
	}))
	t.Cleanup(without.Close) // after the tabs that load from it
	b := openAt(t, without.URL, kneeChapter).ready()
	b.mayError = true
	b.do(chromedp.Click(chromedp.CSS(".off-photo")))
	b.until(`document.querySelector(".off-photo").textContent === "That did not load. Try again"`)
	b.typed("knee-reading", "31")
	b.until(`location.hash.includes("knee-reading=31")`)
}

func TestThePhotoSheetIsAccessible(t *testing.T) {
	t.Parallel()
	script, err := os.ReadFile("../../testdata/judges/node_modules/axe-core/axe.min.js")
	if err != nil {
		if os.Getenv("PLUMBLINE_NEED_BROWSER") == "1" {
			t.Fatal(err)
		}
		t.Skip("*** THE ACCESSIBILITY JUDGE IS NOT INSTALLED: make judges")
	}
	photo := keep(t, "knee.png", asPNG(t, scene(1)))
	// Widths decide about layout, schemes about colours.
	for _, c := range []struct {
		width  int64
		scheme string
	}{{320, "forced"}, {390, "light"}, {820, "dark"}} {
		width, scheme := c.width, c.scheme
		b := reader(t, "#inseam=830&saddle-height=735")
		if *look != "" && width == 390 && scheme == "light" {
			b.do(chromedp.KeyEvent(kb.Escape))
			b.dress(width, 844, scheme)
			eval[bool](b, `(document.querySelector(".off-photo").scrollIntoView({block: "center"}), true)`)
			b.shoot(filepath.Join(*look, "photo-button.png"), false)
			b.do(chromedp.Click(chromedp.CSS(".off-photo")))
		}
		b.dress(width, 844, scheme)
		if scheme == "forced" {
			media := []*emulation.MediaFeature{{Name: "forced-colors", Value: "active"}}
			if _, err := chromedp.Call(b.ctx, emulation.SetEmulatedMedia,
				emulation.SetEmulatedMediaParams{Features: media}); err != nil {
				t.Fatal(err)
			}
		}
		b.pick(photo)
		for _, s := range stickers {
			b.click(s)
		}
		b.told()
		if got := eval[int64](b, `Math.max(document.documentElement.scrollWidth,
			document.querySelector(".photo").scrollWidth)`); got > width {
			t.Errorf("at %d px the sheet is %d px wide", width, got)
		}
		small := eval[[]string](
			b,
			`[...document.querySelectorAll(".photo :is(input, button, .aim), .off-photo")]
				.map((e) => [e, (e.labels?.[0]?.contains(e) ? e.labels[0] : e)
					.getBoundingClientRect()])
				.filter(([, r]) => r.height < 44 || r.width < 44)
				.map(([e, r]) => e.outerHTML.slice(0, 80) + r.width + "x" + r.height)`,
		)
		if len(small) > 0 {
			t.Errorf("at %d px too small for a thumb: %q", width, small)
		}
		b.do(chromedp.Evaluate[chromedp.Void](string(script)))
		var found []finding
		violations := eval[string](b, `axe.run(".photo").then((r) => JSON.stringify(r.violations))`,
			chromedp.EvalAwaitPromise)
		if err := json.Unmarshal([]byte(violations), &found); err != nil {
			t.Fatal(err)
		}
		for _, f := range found {
			t.Errorf("%d px, %s: %s (%s): %s", width, scheme, f.ID, f.Impact, f.Nodes[0].HTML)
		}
		if *look != "" {
			size := emulation.SetDeviceMetricsOverrideParams{Width: width, Height: 1300, DeviceScaleFactor: 1}
			if _, err := chromedp.Call(b.ctx, emulation.SetDeviceMetricsOverride, size); err != nil {
				t.Fatal(err)
			}
			b.shoot(filepath.Join(*look, fmt.Sprintf("photo-%d-%s.png", width, scheme)), false)
		}
	}
}
