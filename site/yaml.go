package site

import "plumbline/site/yamlfile"

// yamlReader reads one YAML file of a guide; what people read in it is set as type.
type yamlReader struct{ yamlfile.Reader }

// entry is one key of a mapping with its value, item one value of a list.
type (
	entry = yamlfile.Entry
	item  = yamlfile.Item
)

// yamlOf reads a file that begins so many lines above its YAML.
func yamlOf(file string, above int) *yamlReader {
	return &yamlReader{yamlfile.Reader{File: file, Above: above}}
}

// bad are the mistakes so far.
func (y *yamlReader) bad() (list []Mistake) {
	for _, m := range y.Bad {
		list = append(list, Mistake(m))
	}
	return list
}

// text reads a single value that people read; "" where it is empty.
func (y *yamlReader) text(e entry) string { return string(unbroken([]byte(typeset(y.Raw(e))))) }

// texts drops the places.
func texts(items []item) []string {
	var out []string
	for _, i := range items {
		out = append(out, i.Text)
	}
	return out
}

// typesetAll sets every text of a list.
func typesetAll(list []string) []string {
	for i := range list {
		list[i] = typeset(list[i])
	}
	return list
}
