package site

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path"
	"regexp"
	"slices"
	"strings"
	"unicode/utf8"

	"plumbline/calculators/measure"
	"plumbline/calculators/words"
	"plumbline/site/catalogue"
	"plumbline/site/told"
)

// source is one file of the guide and where it came from.
type source struct {
	path  string // inside the guide, with /
	file  string // as messages name it
	text  []byte
	local bool       // from the shop's own folder
	lines []textLine // where each line was written, of a page that was put together; else nil

	lang     string         // the language that it is written in
	said     *tongue        // the same, where it is that of the guide around it
	original *source        // what it is a translation of
	alike    bool           // it may have the original's headings and need not
	ids      map[int]string // of its headings, by their lines, where they are the original's
	added    *source        // what a shop adds to it in another language; else nil
}

// The files of a guide that are not pages. In the shop's folder they are laid
// over the built-in ones key by key, so that a shop states only what differs.
const (
	settingsFile = "guide.yaml"
	sourcesFile  = "sources.yaml"
	cautionsFile = "cautions.yaml"
	glossaryFile = "glossary.yaml"
	searchFile   = "search.yaml"
)

var keyed = []string{settingsFile, sourcesFile, cautionsFile, glossaryFile, searchFile, avoidFile, symptomsFile}

// markFile is the ending of a shop's mark. A chapter shows no SVG, because it can carry
// script.
const markFile = ".svg"

// pictures are the files other than text that a chapter may show.
var pictures = []string{".png", ".jpg", ".jpeg", ".webp"}

// tables are the files that a chapter may offer for download, such as a table of
// sizes to start from.
var tables = []string{".csv"}

// maxFile is the largest file that is read, but for pictures. It keeps a slip, such as a video
// dropped into the folder, from filling the memory.
const maxFile = 8 << 20

// layers are the guide's files: the shop's over the built-in ones.
type layers struct {
	base, local map[string]source
	paths       []string // every path once, sorted
	refused     []string // files of the shop’s that cannot be read, which was told

	baseSaid, localSaid map[string]source // keyed files that say the words of others in a language
}

// file returns the file at p that counts.
func (l *layers) file(p string) (source, bool) {
	if s, ok := l.local[p]; ok {
		return s, true
	}
	s, ok := l.base[p]
	return s, ok
}

// lay reads both folders. local may be nil.
func lay(base fs.FS, local fs.FS, localName string) (*layers, []Mistake) {
	l := &layers{}
	var bad, more []Mistake
	l.base, bad = gather(base, "content", false)
	l.local, more = gather(local, localName, true)
	bad = append(bad, more...)
	for _, m := range more {
		l.refused = append(l.refused, strings.TrimPrefix(m.File, localName+"/"))
	}
	for p := range l.base {
		l.paths = append(l.paths, p)
	}
	for p := range l.local {
		if _, both := l.base[p]; !both {
			l.paths = append(l.paths, p)
		}
	}
	slices.Sort(l.paths)
	return l, append(bad, l.twins()...)
}

// twins finds names that differ only in case: a file system that ignores case keeps
// only one of the two.
func (l *layers) twins() []Mistake {
	var bad []Mistake
	seen := map[string]string{}
	for _, p := range l.paths {
		low := strings.ToLower(p)
		if other, ok := seen[low]; ok {
			s, _ := l.file(p)
			if o, _ := l.file(other); !s.local && o.local {
				s, other = o, p
			}
			bad = append(bad, Mistake{File: s.file, What: told.Of("the name differs from “{0}” only in case", other),
				Remedy: told.Of("give it the same spelling, or another name")})
			continue
		}
		seen[low] = p
	}
	return bad
}

// gather reads every file of a folder that a guide can use. A link that leads
// out of the folder is a mistake: a guide is complete in itself.
func gather(folder fs.FS, name string, local bool) (map[string]source, []Mistake) {
	files := map[string]source{}
	var bad []Mistake
	if folder == nil {
		return files, nil
	}
	walk := func(p string, d fs.DirEntry, err error) error {
		file := path.Join(name, p)
		if err != nil {
			bad = append(bad, Mistake{File: file, What: told.Of("cannot be read: {0}", told.Plain(err)),
				Remedy: told.Of("check that it exists and that you may read it")})
			return nil
		}
		if p != "." && strings.HasPrefix(path.Base(p), ".") {
			if d.IsDir() {
				return fs.SkipDir
			}
			return nil
		}
		if d.IsDir() {
			// A guide may be published into a folder of its own; that is no
			// part of it.
			if _, err := fs.Stat(folder, path.Join(p, markerFile)); err == nil && p != "." {
				return fs.SkipDir
			}
			return nil
		}
		if local && p == readmeFile {
			return nil
		}
		if local && d.Type()&fs.ModeSymlink != 0 && !wanted(p) {
			bad = append(bad, linked(folder, p, file)...)
			return nil
		}
		if !wanted(p) {
			if what, remedy := misplaced(p); local && !what.None() {
				bad = append(bad, Mistake{File: file, What: what, Remedy: remedy})
				return nil
			}
			if near := measure.NearestName(path.Base(p), keyed); local && near != "" {
				bad = append(bad, Mistake{File: file, What: told.Of("this name is not read"),
					Remedy: told.Of("did you mean “{0}”?", near)})
			}
			return nil
		}
		text, err := read(folder, p)
		if err != nil {
			m := Mistake{
				File:   file,
				What:   told.Of("cannot be read: {0}", told.Plain(err)),
				Remedy: told.Of("check that you may read it"),
			}
			if large := (tooLarge{}); errors.As(err, &large) {
				m.Remedy = told.Of("make it smaller, or take it out of the folder")
			}
			if d.Type()&fs.ModeSymlink != 0 {
				m.What = told.Of("the link leads out of the folder or nowhere")
				m.Remedy = told.Of("put the file itself into the folder")
			}
			bad = append(bad, m)
			return nil
		}
		s := source{path: p, file: file, text: text, local: local}
		if what, remedy := misnamedPage(p); local && path.Ext(p) == ".md" && !what.None() {
			bad = append(bad, Mistake{File: file, What: what, Remedy: remedy})
			return nil
		}
		if !slices.Contains(pictures, strings.ToLower(path.Ext(p))) {
			if at := invalid(text); at >= 0 {
				line, column := place(text, at)
				bad = append(
					bad,
					Mistake{file, line, column, told.Of("byte 0x{0} is not UTF-8", fmt.Sprintf("%02x", text[at])),
						told.Of("save the file as UTF-8")},
				)
				return nil
			}
			s.text = normal(text)
		}
		files[p] = s
		return nil
	}
	// walk itself reports the errors.
	_ = fs.WalkDir(folder, ".", walk)
	return files, bad
}

// linked says of a link that is no page and no picture that it is passed over: nobody
// expects that of a whole folder.
func linked(folder fs.FS, p, file string) []Mistake {
	info, err := fs.Stat(folder, p)
	if err == nil && !info.IsDir() {
		return nil // a link to a file that a guide does not read
	}
	return []Mistake{{File: file, What: told.Of("this is a link to another folder, which is not followed"),
		Remedy: told.Of("put the folder itself here, with its files")}}
}

// misplaced says of a file that somebody put into their folder in the belief that it
// would be used why it is not; "" for other files, which are passed over.
func misplaced(p string) (what, remedy words.Text) {
	low := strings.ToLower(p)
	ext := path.Ext(low)
	switch {
	case strings.HasPrefix(low, "templates/"), ext == ".html", ext == ".htm", ext == ".js", ext == ".css":
		return told.Of("pages, scripts and styles of your own are not used"),
			told.Of("write chapters as .md files and settings in guide.yaml, and take this file out")
	case ext != path.Ext(p) && wanted(strings.TrimSuffix(p, path.Ext(p))+ext):
		return told.Of("the ending “{0}” is not read", path.Ext(p)), told.Of("write it small: {0}", ext)
	case strings.HasPrefix(low, bikesFolder) && slices.Contains(sheets, ext):
		return told.Of("a bike is a file that ends in {0}", either(bikeFiles)),
			told.Of("save the maker’s table from your spreadsheet as CSV")
	case ext == ".yml":
		return told.Of("files that end in .yml are not read"), told.Of("name it {0}.yaml", strings.TrimSuffix(
			path.Base(p),
			path.Ext(p),
		))
	case ext == ".gif", ext == ".heic", ext == ".avif", ext == ".tif", ext == ".tiff", ext == ".bmp":
		return told.Of("pictures of this kind are not shown"), told.Of("save it as {0}", either(pictures))
	case ext == ".markdown", ext == ".mdown":
		return told.Of("chapters end in .md"), told.Of("give the file that ending")
	}
	return words.Text{}, words.Text{}
}

// sheets are the endings of tables as other programs keep them.
var sheets = []string{".xlsx", ".xls", ".ods", ".numbers", ".tsv", ".pdf"}

// wanted tells whether a guide reads a file of that name.
func wanted(p string) bool {
	ext := path.Ext(p)
	return ext == ".md" || strings.ToLower(ext) == markFile || isFile(p) || isBike(p) ||
		slices.Contains(keyed, inLanguage.ReplaceAllString(p, "")) ||
		ext == catalogue.Ending && path.Dir(p) == catalogue.Folder
}

// inLanguage is the folder of a language at the beginning of a path.
var inLanguage = regexp.MustCompile(`^[a-z]{2,3}(-[A-Za-z0-9]+)*/`)

// tooLarge is the error for a file that is not read for its size.
type tooLarge struct{ error }

func (t tooLarge) Unwrap() error { return t.error }

func read(folder fs.FS, p string) ([]byte, error) {
	limit := int64(maxFile)
	if slices.Contains(pictures, strings.ToLower(path.Ext(p))) {
		limit = pictureBytes
	}
	info, err := fs.Stat(folder, p)
	switch {
	case err != nil:
		return nil, err
	case !info.Mode().IsRegular():
		return nil, told.Wrong("it is not a plain file")
	case info.Size() > limit:
		return nil, tooLarge{told.Wrong("it is too large: it has {0}, and at most {1} are read", size(info.Size()),
			size(limit))}
	}
	return fs.ReadFile(folder, p)
}

// invalid returns where text stops being UTF-8, or -1.
func invalid(text []byte) int {
	for i := 0; i < len(text); {
		r, n := utf8.DecodeRune(text[i:])
		if r == utf8.RuneError && n == 1 {
			return i
		}
		i += n
	}
	return -1
}

// normal takes a byte-order mark off and ends lines with a line feed alone.
func normal(text []byte) []byte {
	s := strings.TrimPrefix(string(text), "\ufeff")
	return []byte(strings.ReplaceAll(strings.ReplaceAll(s, "\r\n", "\n"), "\r", "\n"))
}

// openFolder opens a shop's folder so that nothing outside it can be reached,
// whatever links stand in it.
func openFolder(dir string) (*os.Root, error) {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return nil, told.Wrong("the guide’s folder {0} cannot be opened: {1}", dir, told.Plain(err))
	}
	return root, nil
}
