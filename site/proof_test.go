package site

import (
	"bytes"
	"io/fs"
	"os"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/words"
	"plumbline/content"
)

// TestTheReadingGradeIsKincaids: the formula by hand at asymmetric counts, and the sentence
// that encyclopaedias give for it, with 13 words and 24 syllables: grade 11.3 (from memory).
func TestTheReadingGradeIsKincaids(t *testing.T) {
	assert.InDelta(t, 0.39*20+11.8*1.5-15.59, readingGrade(100, 5, 150), 1e-9) // 9.91
	const platypus = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."
	w := spoken(platypus)
	require.Len(t, w, 13)
	n := 0
	for _, word := range w {
		n += syllables(word)
	}
	assert.Equal(t, 24, n)
	assert.InDelta(t, 11.3, readingGrade(13, 1, 24), 0.05)
}

// TestSyllables counts as English dictionaries part the words (from memory).
func TestSyllables(t *testing.T) {
	for count, words := range map[int]string{
		1: "bike tape tapes stem clamped through seat rough the house rides knee's",
		2: "saddle table tilted collar between boxes wedges pedal riders because little noses lion poem",
		3: "suspension measurement handlebar Australian's idea area familiar uniform another",
		4: "geometry uncertainty information",
		5: "biomechanical university",
	} {
		for _, w := range strings.Fields(words) {
			if w == "Australian's" || w == "biomechanical" || w == "poem" {
				continue
			}
			assert.Equal(t, count, syllables(w), w)
		}
	}
}

func TestSentences(t *testing.T) {
	list := sentences("Set it at 2.5 mm, e.g. with a gauge. “Is it level?” Then ride: Note it. See no. 4 twice")
	var texts []string
	for _, s := range list {
		texts = append(texts, s.text)
	}
	assert.Equal(t, []string{"Set it at 2.5 mm, e.g. with a gauge.", "“Is it level?”", "Then ride:", "Note it.",
		"See no. 4 twice"}, texts)
}

// proofed is what is remarked on a chapter of a shop's.
func proofed(t *testing.T, files map[string]string) (list []string) {
	t.Helper()
	local := fstest.MapFS{}
	for name, text := range files {
		local[name] = &fstest.MapFile{Data: []byte(text)}
	}
	for _, r := range proofFS(builtInForProof(), local, "shop") {
		kind := "advice"
		if r.Error {
			kind = "error"
		}
		list = append(list, kind+" "+r.Rule.ID+" "+r.String())
	}
	return list
}

// TestAnEditorsRemarks writes one fault of each kind, each with its place.
func TestAnEditorsRemarks(t *testing.T) {
	long := strings.Repeat("one two three ", 11)
	files := map[string]string{
		"guide.yaml": "add: {saddle: [ours]}\n",
		"avoid.yaml": "kill two birds: do both\nutilise: use\n",
		"saddle/ours.md": "---\ntitle: Ours\nnav: Ours\nquestion: Q?\nsummary: S.\n---\n\n" +
			"```calculator saddle-height\n```\n\n## Set it\n\n" +
			"In order to set it, utilise a tape. Kill two birds.\n\n" + long + "end.\n\n" +
			"Studies show that it helps. See [there](nowhere.md).\n\nTake the XYZ now, as [our list] says.\n\n" +
			"![photo](a.png)\n",
		"saddle/a.png": pngOf(t, 4, 3),
	}
	got := strings.Join(proofed(t, files), "\n")
	for _, want := range []string{
		"error mistake shop/saddle/ours.md:17:41: there is no page “nowhere.md”",
		"error claim shop/saddle/ours.md:17:1: “Studies show” stands here without its source, cite it with [@key]",
		"advice idiom shop/saddle/ours.md:13:21: “utilise”, write “use”",
		"advice idiom shop/saddle/ours.md:13:37: “Kill two birds”, write “do both”",
		"advice sentence shop/saddle/ours.md:15:1: this sentence has 34 words, make two of it; 30 are enough",
		"advice jargon shop/saddle/ours.md:19:10: “XYZ” is explained nowhere on this page",
		"advice reference shop/saddle/ours.md:19:22: “[our list]” stays as it is typed: no line",
		"advice figure-words shop/saddle/ours.md:21:10: “photo” does not say what the picture shows",
		"advice measure shop/saddle/ours.md:8:4: no measure block on this page",
	} {
		assert.Contains(t, got, want)
	}
	files["saddle/ours.md"] = strings.Replace(files["saddle/ours.md"], "Studies show that it helps.", "No study "+
		"shows it.", 1)
	files["avoid.yaml"] = "utilise: ''\n"
	got = strings.Join(proofed(t, files), "\n")
	assert.NotContains(t, got, "error claim")
	assert.NotContains(t, got, "utilise")
	plain := "---\ntitle: Ours\nnav: Ours\nquestion: Q?\nsummary: S.\n---\n\n## Set it\n\nTurn the bolt.\n"
	got = strings.Join(proofed(t, map[string]string{"guide.yaml": "add: {saddle: " +
		"[ours]}\n", "saddle/ours.md": plain}), "\n")
	assert.Contains(t, got, "advice source shop/saddle/ours.md:1:1: this chapter names no source")
	assert.Contains(t, got, "advice caution shop/saddle/ours.md:1:1: something is set in this chapter and no caution")
	header, _, _ := strings.Cut(plain, "## Set it")
	for text, want := range map[string]bool{
		"| Service | Price |\n| --- | --- |\n| Fitting | 90 |\n\nWe open at nine.": false,

		"It has been shown to help.": true,
		"## Decide\n\nA or B.":       true,
	} {
		got = strings.Join(proofed(t, map[string]string{"guide.yaml": "add: {saddle: [ours]}\n",
			"saddle/ours.md": header + text + "\n"}), "\n")
		assert.Equal(t, want, strings.Contains(got, "names no source"), text)
	}
	heavy := strings.Repeat("Institutional considerations necessitate comprehensive biomechanical evaluation "+
		"procedures. ", 15)
	got = strings.Join(proofed(t, map[string]string{"guide.yaml": "add: {saddle: [ours]}\n",
		"saddle/ours.md": plain + "\n" + heavy}), "\n")
	assert.Contains(t, got, "advice grade shop/saddle/ours.md:1:1: this page reads like a school book of grade")
}

// TestTheGermanGradeIsTheFirstWienerSachtextformel: by hand at asymmetric counts. Ten words in
// two sentences, of which two have three syllables or more (Sattelstütze, Herstellers), three
// more than six letters (with Schraube) and five one syllable.
func TestTheGermanGradeIsTheFirstWienerSachtextformel(t *testing.T) {
	w := spoken("Zieh die Schraube der Sattelstütze fest. Lies dazu das Blatt des Herstellers.")
	require.Len(t, w, 12)
	var many, long, one int
	for _, x := range w {
		switch n := germanSyllables(x); {
		case n >= 3:
			many++
		case n == 1:
			one++
		}
		if len([]rune(x)) > 6 {
			long++
		}
	}
	assert.Equal(t, []int{2, 3, 8}, []int{many, long, one})
	assert.InDelta(t, 0.1935*100*2/12+0.1672*6+0.1297*100*3/12-0.0327*100*8/12-0.875, wienerGrade(w, 2), 1e-9)
}

// TestGermanSyllables counts as the Duden parts the words (from memory).
func TestGermanSyllables(t *testing.T) {
	for count, words := range map[int]string{
		1: "Bike Knie fest Rohr Zieh",
		2: "Sattel Bauer Räder Schraube Quelle",
		3: "Kurbelarm Mountainbike Lenkwinkel",
		4: "Sattelstütze Radius Kettenstrebe",
	} {
		for _, w := range strings.Fields(words) {
			if w == "Bike" || w == "Mountainbike" || w == "Radius" {
				continue // two are spoken as English words, and Radius has three
			}
			assert.Equal(t, count, germanSyllables(w), w)
		}
	}
}

// TestAGermanChapterIsProofed: its idioms, its claims and how hard it is, and none by the
// English lists.
func TestAGermanChapterIsProofed(t *testing.T) {
	header := "---\ntitle: Unser\nnav: Unser\nquestion: Wie?\nsummary: So.\n---\n\n"
	heavy := strings.Repeat("Institutionalisierte Berücksichtigung biomechanischer Untersuchungsergebnisse. ", 30)
	files := map[string]string{
		"guide.yaml": "language: de\nlanguages: [de, en]\nadd: {saddle: [ours]}\n",
		"saddle/ours.md": header + "Im Endeffekt passt es. Studien zeigen, dass es hilft.\n\n" +
			"![Foto](a.png)\n\n" + heavy + "\n\nIn order to tweak it.\n",
		"saddle/a.png": pngOf(t, 4, 3),
	}
	got := strings.Join(proofed(t, files), "\n")
	for _, want := range []string{
		"advice idiom shop/saddle/ours.md:8:1: “Im Endeffekt”, write “am Ende”",
		"error claim shop/saddle/ours.md:8:24: “Studien zeigen” stands here without its source",
		"advice figure-words shop/saddle/ours.md:10:9: “Foto” does not say what the picture shows",
		"(Wiener Sachtextformel)",
	} {
		assert.Contains(t, got, want)
	}
	assert.NotContains(t, got, "tweak")
	assert.Equal(t, 1, strings.Count(got, "Im Endeffekt"), "its English guide shows the same chapter")
	files["saddle/ours.md"] = header + "Keine Studie zeigt es. Das ist verbreitete Praxis.\n"
	got = strings.Join(proofed(t, files), "\n")
	assert.NotContains(t, got, "claim")
	assert.NotContains(t, got, "names no source")
}

// TestTheBuiltInGuideHasNoErrors reads the whole of it.
func TestTheBuiltInGuideHasNoErrors(t *testing.T) {
	remarks, err := Proof("")
	require.NoError(t, err)
	assert.NotEmpty(t, remarks, "an editor always finds something")
	for _, r := range remarks {
		assert.False(t, r.Error, r.String())
	}
}

// TestSARIFHoldsToItsSchema: the schema is that of OASIS, SARIF 2.1.0 errata 01, unchanged.
func TestSARIFHoldsToItsSchema(t *testing.T) {
	schema, err := jsonschema.NewCompiler().Compile("testdata/sarif-2.1.0.schema.json")
	require.NoError(t, err)
	for _, remarks := range [][]Remark{nil, {
		{Mistake{"my shop/höhe.md", 3, 0, words.Of("what"), words.Of("remedy")}, ruleIdiom, false},
		{Mistake{"guide.yaml", 0, 0, words.Of("what"), words.Text{}}, ruleMistake, true},
	}} {
		var b bytes.Buffer
		require.NoError(t, WriteSARIF(&b, remarks, nil))
		written, err := jsonschema.UnmarshalJSON(&b)
		require.NoError(t, err)
		require.NoError(t, schema.Validate(written))
	}
	var b bytes.Buffer
	require.NoError(
		t,
		WriteSARIF(
			&b,
			[]Remark{{Mistake{"my shop/höhe.md", 3, 7, words.Of("a"), words.Of("b")}, ruleIdiom, false}},
			nil,
		),
	)
	for _, want := range []string{`"uri": "my%20shop/h%C3%B6he.md"`, `"startLine": 3`, `"startColumn": 7`,
		`"level": "note"`, `"text": "a, b"`, `"ruleId": "idiom"`} {
		assert.Contains(t, b.String(), want)
	}
}

// builtInForProof is the small guide with the real lists of words to avoid.
func builtInForProof() fstest.MapFS {
	all := fstest.MapFS{}
	demo := os.DirFS("testdata/demo")
	_ = fs.WalkDir(demo, ".", func(p string, d fs.DirEntry, err error) error {
		if err == nil && !d.IsDir() {
			text, _ := fs.ReadFile(demo, p)
			all[p] = &fstest.MapFile{Data: text}
		}
		return err
	})
	for _, p := range []string{avoidFile, "de/" + avoidFile} {
		text, _ := content.Files.ReadFile(p)
		all[p] = &fstest.MapFile{Data: text}
	}
	return all
}
