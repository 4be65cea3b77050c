package words

// Reader is how one person reads: the language, its decimal sign, and the units
// that lengths and masses are shown in. A nil *Reader reads English,
// millimetres and kilograms with a decimal point.
type Reader struct {
	Tag     string             // language, BCP 47; "" is English
	Decimal string             // decimal sign, "." or ","; "" is "."
	Units   string             // "mm", "cm" or "in"; "" is "mm"; "in" brings pounds
	Said    map[English]string // English to this language
	Missing func(english English)
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
	if r == nil || r.Decimal == "" {
		return "."
	}
	return r.Decimal
}

// translate finds the sentence for an English one and reports a missing one.
func (r *Reader) translate(english English) string {
	if r == nil || r.Said == nil || english == "" {
		return string(english)
	}
	if said, ok := r.Said[english]; ok {
		return said
	}
	if r.Missing != nil {
		r.Missing(english)
	}
	return string(english)
}
