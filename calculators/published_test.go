package calculators_test

import (
	"bufio"
	"encoding/json"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// publishedFolder holds the values and says where each comes from.
const publishedFolder = "../testdata/published"

// publishedRow is one published value and what it is for.
type publishedRow struct {
	ID           string         `json:"id"`
	Quantity     string         `json:"quantity"`
	Inputs       map[string]any `json:"inputs"`
	Expected     any            `json:"expected"`
	Tolerance    float64        `json:"tolerance"`
	Unit         string         `json:"unit"`
	Source       string         `json:"source"`
	Verification string         `json:"verification"`
}

// num returns a numeric input and stops the test when the row lacks it.
func (r publishedRow) num(t *testing.T, name string) float64 {
	t.Helper()
	v, ok := r.Inputs[name].(float64)
	if !ok {
		t.Fatalf("%s: no number %q among the inputs", r.ID, name)
	}
	return v
}

// list returns an input that is a list of numbers.
func (r publishedRow) list(t *testing.T, name string) []float64 {
	t.Helper()
	return numbers(t, r.ID+" "+name, r.Inputs[name])
}

// last returns what stands behind the last separator of the row's id.
func (r publishedRow) last(separator string) string {
	return r.ID[strings.LastIndex(r.ID, separator)+1:]
}

func numbers(t *testing.T, what string, v any) []float64 {
	t.Helper()
	values, ok := v.([]any)
	if !ok {
		t.Fatalf("%s is no list", what)
	}
	out := make([]float64, len(values))
	for i := range values {
		if out[i], ok = values[i].(float64); !ok {
			t.Fatalf("%s: item %d is no number", what, i)
		}
	}
	return out
}

// unreachable is what a check answers where the row expects that nothing can be
// computed.
type unreachable struct{}

// published maps the beginning of a row's id to the check that computes it with
// the project's code. The longest fitting beginning wins.
var published = map[string]func(*testing.T, publishedRow) any{}

// register adds checks to the table.
func register(checks map[string]func(*testing.T, publishedRow) any) bool {
	for prefix, check := range checks {
		if published[prefix] != nil {
			panic("two checks for " + prefix)
		}
		published[prefix] = check
	}
	return true
}

// checkFor returns the check whose beginning fits best.
func checkFor(id string) (func(*testing.T, publishedRow) any, string) {
	best := ""
	for prefix := range published {
		if strings.HasPrefix(id, prefix) && len(prefix) > len(best) {
			best = prefix
		}
	}
	return published[best], best
}

// TestPublishedValues compares every published value with what the project
// computes, and fails for a row that nobody answers.
func TestPublishedValues(t *testing.T) {
	waiting := readWaiting(t)
	used := map[string]bool{}
	compared, later := 0, 0
	for _, row := range readPublished(t) {
		check, prefix := checkFor(row.ID)
		reason, waits := waiting[row.ID]
		delete(waiting, row.ID)
		switch {
		case row.Source == "" || row.Verification == "":
			t.Errorf("%s has no source or no verification", row.ID)
		case check != nil && waits:
			t.Errorf("%s is answered by the check %q: take it off waiting.txt (%s)", row.ID, prefix, reason)
		case waits:
			later++
		case check == nil:
			t.Errorf("%s (%s) is neither answered nor named in waiting.txt", row.ID, row.Quantity)
		default:
			used[prefix] = true
			compared++
			t.Run(row.ID, func(t *testing.T) { compare(t, row, row.ID, row.Expected, check(t, row)) })
		}
	}
	for id := range waiting {
		t.Errorf("waiting.txt names %s, which is not in the data", id)
	}
	for prefix := range published {
		if !used[prefix] {
			t.Errorf("the check %q fits no row", prefix)
		}
	}
	t.Logf("%d published values compared, %d waiting for their calculator or page", compared, later)
	if testing.Verbose() {
		fmt.Printf("published values: %d compared, %d waiting\n", compared, later)
	}
}

// compare walks an expected value: a number, a list, a set of named numbers, or
// null for what must be reported as impossible.
func compare(t *testing.T, row publishedRow, what string, want, got any) {
	t.Helper()
	switch want := want.(type) {
	case nil:
		if _, ok := got.(unreachable); !ok {
			t.Errorf("%s: got %v, want a report that it cannot be reached", what, got)
		}
	case float64:
		v, ok := got.(float64)
		if !ok {
			t.Fatalf("%s: got %v (%T), want a number", what, got, got)
		}
		if !(math.Abs(v-want) <= row.Tolerance*(1+1e-9)+1e-12*math.Abs(want)) {
			t.Errorf("%s: got %v %s, want %v ± %v\nquantity: %s\nsource: %s (%s)",
				what, v, row.Unit, want, row.Tolerance, row.Quantity, row.Source, row.Verification)
		}
	case []any:
		values, ok := got.([]float64)
		if !ok || len(values) != len(want) {
			t.Fatalf("%s: got %v, want %d numbers", what, got, len(want))
		}
		for i := range want {
			compare(t, row, fmt.Sprintf("%s[%d]", what, i), want[i], values[i])
		}
	case map[string]any:
		values, ok := got.(map[string]any)
		if !ok {
			t.Fatalf("%s: got %v, want named numbers", what, got)
		}
		for name := range want {
			compare(t, row, what+" "+name, want[name], values[name])
		}
	default:
		t.Fatalf("%s: cannot compare %T", what, want)
	}
}

// readPublished reads all rows and refuses two of one id.
func readPublished(t *testing.T) []publishedRow {
	t.Helper()
	var all []publishedRow
	seen := map[string]bool{}
	for _, name := range []string{"checks-legs.json", "checks-frame.json", "checks-hands.json"} {
		data, err := os.ReadFile(filepath.Join(publishedFolder, name))
		if err != nil {
			t.Fatal(err)
		}
		var rows []publishedRow
		if err := json.Unmarshal(data, &rows); err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		for _, row := range rows {
			if seen[row.ID] {
				t.Errorf("%s: two rows are called %s", name, row.ID)
			}
			seen[row.ID] = true
		}
		all = append(all, rows...)
	}
	return all
}

// readWaiting reads the rows that wait, each with its reason.
func readWaiting(t *testing.T) map[string]string {
	t.Helper()
	file, err := os.Open(filepath.Join(publishedFolder, "waiting.txt"))
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	waiting := map[string]string{}
	lines := bufio.NewScanner(file)
	for number := 1; lines.Scan(); number++ {
		line := strings.TrimSpace(lines.Text())
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		id, reason, _ := strings.Cut(line, " ")
		reason = strings.TrimSpace(reason)
		if reason == "" || waiting[id] != "" {
			t.Errorf("waiting.txt:%d: %q needs a reason and may stand once", number, id)
		}
		waiting[id] = reason
	}
	if err := lines.Err(); err != nil {
		t.Fatal(err)
	}
	return waiting
}
