package webp

import (
	"image"
	"image/color"
)

// Seen is a picture that x/image/webp has read, as it looks. A WebP with loss holds bright
// and dark between 16 and 235 (ITU-R BT.601, which RFC 9649 asks for; from memory); the package hands that out in a
// type for which 0 is black and 255 white, so that shadows turn grey and light turns dull.
// Other pictures stay as they are.
func Seen(m image.Image) image.Image {
	var planes *image.YCbCr
	alpha := func(int, int) uint8 { return 255 }
	switch m := m.(type) {
	case *image.YCbCr:
		planes = m
	case *image.NYCbCrA:
		planes, alpha = &m.YCbCr, func(x, y int) uint8 { return m.A[m.AOffset(x, y)] }
	default:
		return m
	}
	b := planes.Rect
	to := image.NewNRGBA(b)
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			c := planes.YCbCrAt(x, y)
			light, blue, red := 255./219*(float64(c.Y)-16), 255./224*(float64(c.Cb)-128), 255./224*(float64(c.Cr)-128)
			to.SetNRGBA(x, y, color.NRGBA{
				R: level(light + 1.402*red),
				G: level(light - 0.344136*blue - 0.714136*red),
				B: level(light + 1.772*blue),
				A: alpha(x, y),
			})
		}
	}
	return to
}

func level(x float64) uint8 { return uint8(min(max(x+0.5, 0), 255)) }
