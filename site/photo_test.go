package site

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/color"
	"image/draw"
	"image/jpeg"
	"image/png"
	"path"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	"golang.org/x/image/webp"

	towebp "plumbline/site/webp"
)

// jpegOf is a JPEG of that size, black, with its first pixels' corner red and the end of
// its first row green, and with a note of how the camera was held and where it was
// (Exif 2.32: tags 0x0112 and 0x010F).
func jpegOf(t *testing.T, w, h int, held uint16) string {
	t.Helper()
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			c := color.RGBA{A: 255}
			switch {
			case y < h/4 && x < w/4:
				c.R = 255
			case y < h/4 && x >= w-w/4:
				c.G = 255
			}
			img.Set(x, y, c)
		}
	}
	var b bytes.Buffer
	require.NoError(t, jpeg.Encode(&b, img, &jpeg.Options{Quality: 95}))
	if held == 0 {
		return b.String()
	}
	maker := "SecretCamera\x00"
	var exif bytes.Buffer
	exif.WriteString("Exif\x00\x00MM\x00\x2a\x00\x00\x00\x08")
	for _, v := range []any{
		uint16(2),
		uint16(0x010f), uint16(2), uint32(len(maker)), uint32(8 + 2 + 24 + 4),
		uint16(0x0112), uint16(3), uint32(1), held, uint16(0),
		uint32(0),
	} {
		require.NoError(t, binary.Write(&exif, binary.BigEndian, v))
	}
	exif.WriteString(maker)
	var out bytes.Buffer
	out.Write(b.Bytes()[:2])
	out.Write([]byte{0xff, 0xe1})
	require.NoError(t, binary.Write(&out, binary.BigEndian, uint16(exif.Len()+2)))
	out.Write(exif.Bytes())
	out.Write(b.Bytes()[2:])
	return out.String()
}

// TestAPhotoIsTurnedUpright: where the first row and the first column stand is the table
// of Exif 2.32, 4.6.4 A, tag Orientation. 6, for one: “the 0th row is the visual
// right-hand side, the 0th column the visual top”, so the corner of both is top right,
// and the first row ends bottom right.
func TestAPhotoIsTurnedUpright(t *testing.T) {
	const topLeft, topRight, bottomLeft, bottomRight = 0, 1, 2, 3
	for held, want := range map[uint16][2]int{
		0: {topLeft, topRight}, 1: {topLeft, topRight}, 2: {topRight, topLeft}, 3: {bottomRight, bottomLeft},
		4: {bottomLeft, bottomRight}, 5: {topLeft, bottomLeft}, 6: {topRight, bottomRight},
		7: {bottomRight, topRight}, 8: {bottomLeft, topLeft},
	} {
		data := jpegOf(t, 80, 40, held)
		p, err := develop("a.jpg", []byte(data))
		require.NoError(t, err)
		wide := [2]int{80, 40}
		if held >= 5 {
			wide = [2]int{40, 80}
		}
		assert.Equal(t, wide, [2]int{p.width, p.height}, held)
		assert.Equal(t, ".webp", p.ext)
		img, err := webp.Decode(bytes.NewReader(p.data))
		require.NoError(t, err)
		b := img.Bounds()
		for i, corner := range []image.Point{{2, 2}, {b.Dx() - 3, 2}, {2, b.Dy() - 3}, {b.Dx() - 3, b.Dy() - 3}} {
			r, g, _, _ := img.At(corner.X, corner.Y).RGBA()
			assert.Equal(t, i == want[0], r > 0x8000, "%d: red in corner %d", held, i)
			assert.Equal(t, i == want[1], g > 0x8000, "%d: green in corner %d", held, i)
		}
		assert.NotContains(t, string(p.data), "SecretCamera")
		assert.NotContains(t, string(p.data), "Exif")
	}
}

// TestAPhotoIsScaledAndKeepsItsShape takes the size of a common phone's photo.
func TestAPhotoIsScaledAndKeepsItsShape(t *testing.T) {
	p, err := develop("a.JPG", []byte(jpegOf(t, 2400, 1000, 6)))
	require.NoError(t, err)
	assert.Equal(t, [2]int{667, 1600}, [2]int{p.width, p.height}) // 1000·1600/2400, rounded
	got, err := webp.DecodeConfig(bytes.NewReader(p.data))
	require.NoError(t, err)
	assert.Equal(t, [2]int{667, 1600}, [2]int{got.Width, got.Height})
	clear := image.NewNRGBA(image.Rect(0, 0, 20, 10))
	var b bytes.Buffer
	require.NoError(t, png.Encode(&b, clear))
	p, err = develop("a.png", b.Bytes())
	require.NoError(t, err)
	assert.Equal(t, ".png", p.ext, "what is transparent stays so")
}

// TestAWebPKeepsItsColours: as WebP too a photo may come.
func TestAWebPKeepsItsColours(t *testing.T) {
	for _, want := range []color.NRGBA{{12, 12, 12, 255}, {240, 60, 30, 255}, {250, 250, 250, 255}} {
		img := image.NewNRGBA(image.Rect(0, 0, 40, 20))
		draw.Draw(img, img.Bounds(), image.NewUniform(want), image.Point{}, draw.Src)
		var came bytes.Buffer
		require.NoError(t, towebp.Encode(&came, img))
		p, err := develop("a.webp", came.Bytes())
		require.NoError(t, err)
		reader, _, err := p.forReaders()
		require.NoError(t, err)
		got, err := jpeg.Decode(bytes.NewReader(reader))
		require.NoError(t, err)
		r, g, b, _ := got.At(20, 10).RGBA()
		for i, pair := range [][2]uint32{{r, uint32(want.R)}, {g, uint32(want.G)}, {b, uint32(want.B)}} {
			assert.InDelta(t, pair[1], pair[0]>>8, 5, "%v: %d", want, i)
		}
	}
}

// TestFilesAsPeopleNameThem shows pictures and offers a table whose names no address may
// have.
func TestFilesAsPeopleNameThem(t *testing.T) {
	photo := jpegOf(t, 80, 40, 0)
	decomposed := "saddle/Ho\u0308he.JPG" // as some systems store an ö
	g, bad := shopOver(map[string]string{
		"saddle/tilt.md": string(page("![a](<Unser Sattel 50% (neu).JPG>) ![b](Unser%20Sattel%2050%25%20(neu).JPG) " +
			"![c](Höhe.JPG) ![d](größe.jpeg) ![e](Groesse.jpeg) [f](<Größen 2026.CSV>)").Data),
		"saddle/Unser Sattel 50% (neu).JPG": photo,
		decomposed:                          photo, "saddle/größe.jpeg": photo, "saddle/Groesse.jpeg": photo,
		"saddle/Größen 2026.CSV": "a,b\n",
	})
	require.Empty(t, lines(bad))
	all := built(t, g)
	for _, want := range []string{"saddle/unser-sattel-50-neu.webp", "saddle/hoehe.webp", "saddle/groessen-2026.csv"} {
		assert.Contains(t, all, want)
	}
	html := string(all["saddle/tilt.html"])
	assert.Equal(t, 2, strings.Count(html, `<img src="unser-sattel-50-neu.webp" alt="`))
	assert.Contains(t, html, `<img src="hoehe.webp" alt="c" width="80" height="40" loading="lazy" decoding="async">`)
	twins := 0
	for p := range all {
		if strings.HasPrefix(p, "saddle/groesse-") && path.Ext(p) == ".webp" {
			twins++
		}
	}
	assert.Equal(t, 2, twins, "two names that become one address stay two files")
}

func TestFilesThatCannotBeUsedAreToldFirst(t *testing.T) {
	photo := jpegOf(t, 80, 40, 0)
	_, bad := shopOver(map[string]string{
		"saddle/tilt.md":       string(page("![a](a.png) ![b](b.jpg) ![c](c.jpg) ![d](d.jpg)").Data),
		"saddle/a.png":         photo,
		"saddle/b.jpg":         photo[:len(photo)-200],
		"saddle/c.jpg":         "no picture",
		"saddle/d.jpg":         strings.Repeat("\x00", pictureBytes+1),
		"saddle/Höhe & Maß.md": "x",
		"shop/e.avif":          "x",
	})
	for _, want := range []string{
		"shop/saddle/a.png: this is a JPEG and its name ends in .png, name it a.jpg",
		"shop/saddle/b.jpg: the picture is damaged",
		"shop/saddle/c.jpg: this cannot be read as a picture",
		"shop/saddle/d.jpg: cannot be read: it is too large: it has 50 MB, and at most 50 MB are read",
		"shop/saddle/Höhe & Maß.md: the name of a chapter is its address, and “saddle/Höhe & Maß.md” cannot " +
			"stand in one, " +
			"name it saddle/hoehe-mass.md",
		"shop/shop/e.avif: pictures of this kind are not shown",
	} {
		wantMistake(t, bad, want)
	}
}
