package markup

import "plumbline/calculators/measure"

// Unit writes the unit beside the field of key: a button that changes it where it has
// others, plain text otherwise, nothing for a number without one. The field is
// described by the element whose id ends in the key and "-u".
func (w *Writer) Unit(key string, u *measure.Unit) *Writer { return w.UnitAt("-"+key, key, u) }

// UnitAt writes what Unit writes beside one of several fields of key, whose ids end in
// at.
func (w *Writer) UnitAt(at, key string, u *measure.Unit) *Writer {
	mark := u.Mark()
	if mark == "" {
		return w
	}
	others := u.Others()
	if len(others) == 0 {
		return w.Raw(`<span class="unit" id="`).Name(at + "-u").Raw(`">`).Text(mark).Raw(`</span>`)
	}
	w.Raw(`<button type="button" class="unit" id="`).Name(at + "-c").Raw(`" data-unit-of="`).Text(key).
		Raw(`" data-next="`).Text(others[0].Symbol).Raw(`"><span id="`).Name(at + "-u").Raw(`">`).Text(mark)
	return w.Raw(`</span><span class="unseen">, `).Say("read it in another unit").Raw(`</span></button>`)
}
