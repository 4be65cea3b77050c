package record_test

import (
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/calculators/record"
)

// Hexadecimal digits may be small or large (RFC 3986, section 2.1), and a percent sign
// without two of them stands for itself.
func TestPercentEncodingIsReadInEitherCase(t *testing.T) {
	var got []string
	whole := record.Fields("a=%c2%b13&b=%C2%B13&c=50%&d=%zz&e=%4&%f=1", func(key, value string) {
		got = append(got, key+" "+value)
	})
	assert.True(t, whole)
	assert.Equal(t, []string{"a ±3", "b ±3", "c 50%", "d %zz", "e %4", "%f 1"}, got)
}

// A record that takes in a newer one may hold what only the newer version knows.
func TestMergedRecordsKeepTheHigherVersion(t *testing.T) {
	one, two := &record.Record{Version: 1}, &record.Record{Version: 2}
	assert.Equal(t, 2, record.Merge(one, two).Version)
	assert.Equal(t, 2, record.Merge(two, one).Version)
}
