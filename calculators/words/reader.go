package words

// Reader is how one person reads: the language, and the units that lengths and masses are
// shown in. A nil *Reader reads English and millimetres.
type Reader struct {
	Language *Language // nil is English
	Units    string    // "mm", "cm" or "in"; "" is "mm"; "in" brings pounds
}

// LengthUnit returns the symbol of the unit that r reads lengths in.
func (r *Reader) LengthUnit() string {
	if r == nil || r.Units == "" {
		return "mm"
	}
	return r.Units
}

// DecimalSign returns r's decimal sign.
func (r *Reader) DecimalSign() string {
	if l := r.language(); l != nil && l.Decimal != "" {
		return l.Decimal
	}
	return "."
}

// UnitSpace returns what stands between a number and its unit: a no-break space (ISO
// 80000-1), in some languages a narrow one.
func (r *Reader) UnitSpace() string {
	if l := r.language(); l != nil && l.Space != "" {
		return l.Space
	}
	return "\u00a0"
}

func (r *Reader) language() *Language {
	if r == nil {
		return nil
	}
	return r.Language
}

// Lacks tells whether r reads a text in English because r's language has no words for it. A
// text whose holes alone have words is lacking where one of those is.
func (r *Reader) Lacks(t Text) bool {
	l := r.language()
	if l == nil {
		return false
	}
	if worded(t.English) {
		return !l.Has(t.English)
	}
	for _, h := range t.Holes {
		if text, ok := h.(Text); ok && r.Lacks(text) {
			return true
		}
	}
	return false
}

// translate finds the sentence for an English one.
func (r *Reader) translate(english English) string {
	if said, ok := r.language().say(english); ok {
		return said
	}
	return english.plain()
}
