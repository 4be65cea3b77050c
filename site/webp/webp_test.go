package webp_test

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"image"
	"image/color"
	"math"
	"sync"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
	xwebp "golang.org/x/image/webp"

	"plumbline/site/webp"
)

// photo is soft as a photo is, of every colour and wider than high.
func photo() image.Image {
	m := image.NewRGBA(image.Rect(0, 0, 120, 75))
	for y := range 75 {
		for x := range 120 {
			m.SetRGBA(x, y, color.RGBA{uint8(2 * x), uint8(3 * y), uint8(255 - x - y), 255})
		}
	}
	return m
}

// TestAPictureLooksAsBefore lets x/image/webp, which the project did not write, read what was
// written.
func TestAPictureLooksAsBefore(t *testing.T) {
	var b bytes.Buffer
	require.NoError(t, webp.Encode(&b, photo()))
	got, err := xwebp.Decode(bytes.NewReader(b.Bytes()))
	require.NoError(t, err)
	got = webp.Seen(got)
	require.Equal(t, photo().Bounds(), got.Bounds())
	var off float64
	for y := range 75 {
		for x := range 120 {
			r, g, bl, _ := got.At(x, y).RGBA()
			wr, wg, wb, _ := photo().At(x, y).RGBA()
			for _, pair := range [][2]uint32{{r, wr}, {g, wg}, {bl, wb}} {
				off += math.Abs(float64(pair[0])-float64(pair[1])) / 257
			}
		}
	}
	assert.Less(t, off/(3*75*120), 2.5, "levels of 255, in the mean")
}

// TestTheSameBytesEverywhere: a guide that is published twice, or on another system, has the
// same files. The hash is that of amd64 and of arm64.
func TestTheSameBytesEverywhere(t *testing.T) {
	var all [4]bytes.Buffer
	var at sync.WaitGroup
	for i := range all {
		at.Go(func() { assert.NoError(t, webp.Encode(&all[i], photo())) })
	}
	at.Wait()
	for i := range all {
		assert.Equal(t, "a757ec8705184adf", fmt.Sprintf("%x", sha256.Sum256(all[i].Bytes()))[:16])
	}
}

// TestWhatIsTransparentStaysSo, and a picture that is a part of another one is only that.
func TestWhatIsTransparentStaysSo(t *testing.T) {
	m := image.NewNRGBA(image.Rect(0, 0, 40, 30))
	for y := 10; y < 30; y++ {
		for x := 15; x < 40; x++ {
			m.SetNRGBA(x, y, color.NRGBA{R: 230, A: 255})
		}
	}
	var b bytes.Buffer
	require.NoError(t, webp.Encode(&b, m.SubImage(image.Rect(10, 5, 40, 30))))
	got, err := xwebp.Decode(bytes.NewReader(b.Bytes()))
	require.NoError(t, err)
	got = webp.Seen(got)
	assert.Equal(t, image.Rect(0, 0, 30, 25), got.Bounds())
	_, _, _, a := got.At(1, 1).RGBA()
	assert.Zero(t, a)
	r, g, _, a := got.At(25, 20).RGBA()
	assert.Equal(t, uint32(0xffff), a)
	assert.InDelta(t, 230, r/257, 6)
	assert.InDelta(t, 0, g/257, 6)
}
