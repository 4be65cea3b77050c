package exchange_test

import (
	"encoding/json"
	"runtime"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/exchange"
	"plumbline/calculators/record"
)

// hostile are files that somebody may send, of any length: each makes n times one thing.
var hostile = map[string]func(n int) string{
	"readings": func(n int) string {
		return `{"values":[{"key":"inseam","value":830,"unit":"mm","readings":[` + times("830", n, ",") + `]}]}`
	},
	"repeated members of the record": func(n int) string {
		return `{` + strings.Repeat(`"name":"Ash",`, n) + `"values":[]}`
	},
	"unknown members of the record": func(n int) string {
		var b strings.Builder
		for i := range n {
			b.WriteString(`"x` + strconv.Itoa(i) + `":1,`)
		}
		return `{` + b.String() + `"values":[{"key":"inseam","value":830}]}`
	},
	"repeated members of a value": func(n int) string {
		return `{"values":[{` + strings.Repeat(`"note":1,`, n) + `"key":"inseam","value":830}]}`
	},
	"unknown members of many values": func(n int) string {
		members := strings.Repeat(`"y":[],`, n/500)
		return `{"values":[` + times(`{`+members+`"key":"zz","value":1}`, 500, ",") + `]}`
	},
	"keyless values": func(n int) string { return `{"values":[` + times("{}", n, ",") + `]}` },
	"riders":         func(n int) string { return book(times(`{"bikes":[]}`, n, ",")) },
	"lines of a log": func(n int) string {
		return book(`{"bikes":[{"values":[],"log":[` + times(`{"date":"x"}`, n, ",") + `]}]}`)
	},
	"ticks": func(n int) string {
		return book(`{"bikes":[{"values":[],"ticks":{"a":""` + strings.Repeat(`,"a":"2026-01-02"`, n) + `}}]}`)
	},
	"scores": func(n int) string {
		return book(`{"bikes":[{"log":[{"date":"2026-01-02","scores":[` + times("5", n, ",") + `]}]}]}`)
	},
	"escapes":         func(n int) string { return `{"note":"` + strings.Repeat(`\u00e9`, n) + `","values":[]}` },
	"cells":           func(n int) string { return "key,value" + strings.Repeat(",", n) + "\ninseam,830\n" },
	"lines of a CSV":  func(n int) string { return "key,value\n" + strings.Repeat("inseam,830\n", n) },
	"quotes of a CSV": func(n int) string { return "key,value\ninseam,\"" + strings.Repeat(`""`, n) },
	"pairs":           func(n int) string { return "#inseam=830" + strings.Repeat("&inseam=831", n) },
	"signs":           func(n int) string { return "#inseam=" + strings.Repeat("%", n) },
	"depth":           func(n int) string { return strings.Repeat("[", n) + strings.Repeat("]", n) },
}

func times(s string, n int, sep string) string {
	return strings.TrimSuffix(strings.Repeat(s+sep, max(n, 0)), sep)
}

func book(riders string) string {
	return `{"format":"` + exchange.Format + `","version":2,"riders":[` + riders + `]}`
}

// opened reads a file as the page and the command do, says everything that is wrong with
// it and writes what was read. It returns how many letters a page has to show.
func opened(text string) int {
	b, problems := exchange.OpenBook(text)
	said := 0
	for _, p := range problems {
		said += len(p.Text.Say(nil))
	}
	if b != nil {
		said += len(exchange.BookJSON(b))
	}
	if r, _ := exchange.Open(text); r != nil {
		said += len(r.Fragment())
	}
	return said
}

// cost is how many bytes f takes from the heap, in all, and how long it takes at best.
func cost(tries int, f func()) (bytes uint64, at time.Duration) {
	at = time.Hour
	for range tries {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		begun := time.Now()
		f()
		at = min(at, time.Since(begun))
		runtime.ReadMemStats(&after)
		bytes = after.TotalAlloc - before.TotalAlloc
	}
	return bytes, at
}

// TestHostileFilesCostNoMoreThanTheirLength: ten times the things in a file take at most
// ten times the time and the memory, and what the garbage collector and a busy machine
// add. Where two lists are compared with one another, or a text is put together letter by
// letter, it is a hundred times.
func TestHostileFilesCostNoMoreThanTheirLength(t *testing.T) {
	for name, text := range hostile {
		t.Run(name, func(t *testing.T) {
			small, large := text(2_000), text(20_000)
			require.Less(t, len(large), exchange.Longest, "it is looked at")
			space1, time1 := cost(3, func() { opened(small) })
			space2, time2 := cost(3, func() { opened(large) })
			assert.LessOrEqual(t, space2, 15*space1+1<<20, "bytes: %d, then %d", space1, space2)
			assert.LessOrEqual(t, time2, 25*time1+time.Second, "%v, then %v", time1, time2)
			assert.Less(t, opened(large), 2*exchange.Longest, "letters to show")
		})
	}
}

// TestTheLongestFilesAreBounded: whatever a file of the longest length holds, and one that
// is longer, it is answered within 96 MB and with few sentences, and within half a second
// on a machine that has nothing else to do.
func TestTheLongestFilesAreBounded(t *testing.T) {
	for name, text := range hostile {
		for _, n := range []int{60_000, 250_000} {
			long := text(n)
			space, took := cost(1, func() { opened(long) })
			assert.Less(t, space, uint64(96<<20), "%s × %d: bytes", name, n)
			assert.Less(t, took, 10*time.Second, "%s × %d", name, n)
			_, problems := exchange.OpenBook(long)
			assert.LessOrEqual(t, len(problems), 100, "%s × %d: problems", name, n)
		}
	}
	long := `[{"note":"` + strings.Repeat("x", 64<<20) + `"}]`
	space, took := cost(1, func() { opened(long) })
	assert.Less(t, space, uint64(1<<20), "a text that is too long is not taken apart")
	assert.Less(t, took, 2*time.Second)
}

// TestTooManyReadingsAreSaid: the value stays, and the sentence has both numbers.
func TestTooManyReadingsAreSaid(t *testing.T) {
	r, problems := exchange.Open(hostile["readings"](25_000))
	require.NotNil(t, r)
	require.Len(t, problems, 1)
	assert.Equal(t, "“inseam” has 25000 readings; up to 5 are read, and its value is taken instead.",
		problems[0].Text.Say(nil))
	assert.Equal(t, "inseam=830", r.Fragment())
}

// TestWhatIsLeftOutIsCounted: neither members nor problems vanish without a word.
func TestWhatIsLeftOutIsCounted(t *testing.T) {
	r, problems := exchange.Open(hostile["unknown members of the record"](5_000))
	require.NotNil(t, r)
	require.Len(t, problems, 1)
	assert.Equal(t, "The record has 905 members more than are read; they are left out.", problems[0].Text.Say(nil),
		"5,000 and the value, of which 8 × 512 are kept")
	assert.Len(t, r.Entries, 8*record.MostPairs)

	_, problems = exchange.Open(hostile["keyless values"](record.MostPairs))
	require.Len(t, problems, 100)
	assert.Equal(t, "413 more problems are not listed.", problems[99].Text.Say(nil))
}

// TestAFullFileIsStillRead: the bounds lie beyond what this package writes itself.
func TestAFullFileIsStillRead(t *testing.T) {
	b := &record.Book{}
	for len(exchange.BookJSON(b)) < exchange.Longest*9/10 {
		rider := record.Rider{Record: &record.Record{Name: "Ash"}}
		for range 40 {
			r, _ := record.Decode("inseam=830;834;829&stature=1740&saddle-height=712&bike=Hardtail")
			rider.Bikes = append(rider.Bikes, record.Bike{Record: r})
		}
		b.Riders = append(b.Riders, rider)
	}
	text := exchange.BookJSON(b)
	require.True(t, json.Valid([]byte(text)))
	back, problems := exchange.OpenBook(text)
	require.NotNil(t, back, "%v", problems)
	assert.Empty(t, problems)
	assert.Equal(t, text, exchange.BookJSON(back))
}
