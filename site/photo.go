package site

import (
	"bytes"
	"crypto/sha256"
	"fmt"
	"image"
	"image/jpeg"
	"image/png"
	"path"
	"slices"
	"strings"
	"sync"

	"github.com/bep/imagemeta"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/util"
	"golang.org/x/image/draw"
	_ "golang.org/x/image/webp" // registers the format with image.Decode

	"plumbline/calculators/words"
	"plumbline/site/told"
	"plumbline/site/webp"
)

// A picture is never published as it came. A photo tells where and when it was taken, is
// larger than any page shows it, and often lies on its side. It is decoded, turned
// upright, scaled and written anew, which leaves behind everything but its pixels.
//
// What comes out is WebP, or PNG where PNG came in or something is transparent. E-readers,
// of which not all know WebP, get a photo as JPEG.

// The limits of a picture.
const (
	pictureBytes  = 50 << 20
	picturePixels = 100_000_000
	longSide      = 1600 // as published: twice the width of a column of text
)

// picture is a picture as it is published.
type picture struct {
	data          []byte
	ext           string
	width, height int
	from          []byte // the file that it was made from
}

// forReaders is the picture as every e-reader shows it (EPUB 3.2, core media types): PNG as
// it is, a photo as JPEG.
func (p *picture) forReaders() (data []byte, ext string, err error) {
	if p.ext == ".png" {
		return p.data, p.ext, nil
	}
	src, err := pixels(p.from)
	if err != nil {
		return nil, "", err
	}
	var out bytes.Buffer
	err = jpeg.Encode(&out, src, &jpeg.Options{Quality: 85})
	return out.Bytes(), ".jpg", err
}

// pictureKinds are the kinds of pictures by the names that package image gives them, with
// the endings that each may have.
var pictureKinds = map[string][]string{"jpeg": {".jpg", ".jpeg"}, "png": {".png"}, "webp": {".webp"}}

// developed keeps pictures by the hash of the file that they were made from.
var developed sync.Map

type developing struct {
	once sync.Once
	made *picture
	err  error
}

// develop makes a picture as it is published. The errors are of wrongFile.
func develop(name string, data []byte) (*picture, error) {
	v, _ := developed.LoadOrStore(sha256.Sum256(data), &developing{})
	d := v.(*developing)
	d.once.Do(func() { d.made, d.err = developAnew(data) })
	if d.err != nil {
		return nil, d.err
	}
	return d.made, misnamed(name, data)
}

// misnamed tells whether a picture is of another kind than its name says. Some servers
// send it under the wrong type then, and browsers do not show it.
func misnamed(name string, data []byte) error {
	_, kind, err := image.DecodeConfig(bytes.NewReader(data))
	ext := strings.ToLower(path.Ext(name))
	endings := pictureKinds[kind]
	if err != nil || len(endings) == 0 || slices.Contains(endings, ext) {
		return nil
	}
	return wrongFile{told.Of("this is a {0} and its name ends in {1}", strings.ToUpper(kind), path.Ext(name)),
		told.Of("name it {0}{1}", strings.TrimSuffix(path.Base(name), path.Ext(name)), endings[0])}
}

// wrongFile is why a file of the shop's cannot be used.
type wrongFile struct{ what, remedy words.Text }

func (w wrongFile) Error() string { return w.what.Say(nil) }

func developAnew(data []byte) (*picture, error) {
	const again words.English = "save it as PNG or JPEG once more"
	size, kind, err := image.DecodeConfig(bytes.NewReader(data))
	switch {
	case err != nil:
		return nil, wrongFile{told.Of("this cannot be read as a picture"), told.Of(again)}
	case size.Width*size.Height > picturePixels:
		return nil, wrongFile{
			told.Of("the picture has {0} by {1} pixels, which is too large", size.Width, size.Height),
			told.Of("scale it to {0} on its longer side", longSide),
		}
	case size.Width < 1 || size.Height < 1:
		return nil, wrongFile{told.Of("the picture is empty"), told.Of(again)}
	}
	src, err := pixels(data)
	if err != nil {
		return nil, wrongFile{told.Of("the picture is damaged: {0}", err.Error()), told.Of(again)}
	}
	p := &picture{width: src.Bounds().Dx(), height: src.Bounds().Dy(), ext: ".webp", from: data}
	var out bytes.Buffer
	opaque, ok := src.(interface{ Opaque() bool })
	if kind == "png" || ok && !opaque.Opaque() {
		p.ext = ".png"
		err = (&png.Encoder{CompressionLevel: png.BestCompression}).Encode(&out, src)
	} else {
		err = webp.Encode(&out, src)
	}
	p.data = out.Bytes()
	return p, err
}

// pixels are those of a file, as large as a page shows them and upright.
func pixels(data []byte) (image.Image, error) {
	src, kind, err := image.Decode(bytes.NewReader(data))
	if err != nil {
		return nil, err
	}
	if kind == "webp" {
		src = webp.Seen(src)
	}
	return upright(fitted(src), orientation(kind, data)), nil
}

// fitted scales a picture down to what a page shows.
func fitted(src image.Image) image.Image {
	b := src.Bounds()
	long := max(b.Dx(), b.Dy())
	if long <= longSide {
		return src
	}
	part := func(n int) int { return max(1, (n*longSide+long/2)/long) }
	dst := image.NewRGBA(image.Rect(0, 0, part(b.Dx()), part(b.Dy())))
	draw.CatmullRom.Scale(dst, dst.Bounds(), src, b, draw.Src, nil)
	return dst
}

// orientation is how a camera was held: 1 upright, up to 8 (Exif 2.32, tag 0x0112).
func orientation(kind string, data []byte) int {
	formats := map[string]imagemeta.ImageFormat{"jpeg": imagemeta.JPEG, "png": imagemeta.PNG, "webp": imagemeta.WebP}
	at := 1
	_, err := imagemeta.Decode(imagemeta.Options{
		R: bytes.NewReader(data), ImageFormat: formats[kind], Sources: imagemeta.EXIF,
		ShouldHandleTag: func(tag imagemeta.TagInfo) bool { return tag.Tag == "Orientation" },
		HandleTag: func(tag imagemeta.TagInfo) error {
			if v, ok := tag.Value.(uint16); ok && v >= 1 && v <= 8 {
				at = int(v)
			}
			return nil
		},
	})
	if err != nil {
		return 1 // a picture without a note, or with a damaged one, is upright
	}
	return at
}

// upright turns and mirrors a picture so that it stands as it was seen. Where the first
// row and the first column of the file belong is the table of Exif 2.32, 4.6.4.
func upright(src image.Image, orientation int) image.Image {
	if orientation <= 1 {
		return src
	}
	b := src.Bounds()
	w, h := b.Dx(), b.Dy()
	out := image.Rect(0, 0, w, h)
	if orientation >= 5 {
		out = image.Rect(0, 0, h, w)
	}
	dst := image.NewRGBA(out)
	for y := range h {
		for x := range w {
			tx, ty := x, y
			switch orientation {
			case 2:
				tx = w - 1 - x
			case 3:
				tx, ty = w-1-x, h-1-y
			case 4:
				ty = h - 1 - y
			case 5:
				tx, ty = y, x
			case 6:
				tx, ty = h-1-y, x
			case 7:
				tx, ty = h-1-y, w-1-x
			case 8:
				tx, ty = y, w-1-x
			}
			dst.Set(tx, ty, src.At(b.Min.X+x, b.Min.Y+y))
		}
	}
	return dst
}

// shownFile is a file of the shop's that some page shows or offers.
type shownFile struct {
	url string
	*picture
}

// publishedAs is the address of a picture or a table. A name as people write it, with
// spaces, umlauts, a per cent sign or capitals, is made into one that stands in an
// address as it is.
func (g *Guide) publishedAs(p, ext string) string {
	simple := func(p string) string {
		var parts []string
		for part := range strings.SplitSeq(strings.TrimSuffix(p, path.Ext(p)), "/") {
			parts = append(parts, addressed(part))
		}
		return strings.Join(parts, "/")
	}
	name := simple(p)
	for _, other := range g.layers.paths { // two names may become one
		if other != p && isFile(other) && simple(other) == name {
			return name + "-" + edition([]byte(p)) + ext
		}
	}
	return name + ext
}

// pictureAt is the picture that is published at an address.
func (g *Guide) pictureAt(url string) *picture {
	g.showing.RLock()
	defer g.showing.RUnlock()
	for _, s := range g.shown {
		if s.picture != nil && s.url == url {
			return s.picture
		}
	}
	return nil
}

// developAll makes the pictures of all pages at once, on all processors.
func (g *Guide) developAll() {
	var list []source
	for _, p := range g.pages {
		for _, n := range p.images {
			if s, ok := g.fileAt(p, string(n.Destination)); ok &&
				slices.Contains(pictures, strings.ToLower(path.Ext(s.path))) {
				list = append(list, s)
			}
		}
	}
	_ = inParallel(len(list), func(i int) error {
		_, _ = develop(list[i].path, list[i].text) // asked for again where it is shown
		return nil
	})
}

// image writes a picture with its size, so that nothing moves when it arrives, and lets
// the browser wait with it until it is nearly in view.
func (w *writer) image(out util.BufWriter, _ []byte, n ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	img := n.(*ast.Image)
	var size string
	w.g.showing.RLock()
	defer w.g.showing.RUnlock()
	for _, s := range w.g.shown {
		if s.picture != nil && relative(w.p.URL, s.url) == string(img.Destination) {
			size = fmt.Sprintf(" width=\"%d\" height=\"%d\"", s.width, s.height)
		}
	}
	title := ""
	if len(img.Title) > 0 {
		title = " title=\"" + string(escaped(string(img.Title))) + "\""
	}
	_, _ = out.WriteString("<img src=\"" + string(escaped(string(img.Destination))) + "\" alt=\"" +
		string(
			escaped(string(inlineText(n, w.p.body()))),
		) + "\"" + title + size + " loading=\"lazy\" decoding=\"async\">")
	return ast.WalkSkipChildren, nil
}
