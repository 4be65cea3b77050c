package main

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/catalog"
	"plumbline/calculators/caution"
	"plumbline/calculators/panel"
)

// flat is a text with its line breaks as blanks, as a terminal wraps it.
func flat(s string) string { return strings.Join(strings.Fields(s), " ") }

// TestACautionHasItsGradeEverywhere: on the page that is printed, in the terminal and in
// JSON the words of every caution of every calculator come with stop, check or know.
func TestACautionHasItsGradeEverywhere(t *testing.T) {
	seen := map[caution.Grade]int{}
	for _, c := range catalog.All() {
		var typed []string
		for _, in := range c.Inputs {
			if in.Example != "" {
				typed = append(typed, in.Key+"="+in.Example)
			}
		}
		var text, object, bad bytes.Buffer
		require.NoError(
			t,
			(&calc{Name: c.Name, Values: typed}).Run(streams{out: &text, err: &bad}),
			"%s: %s",
			c.Name,
			&bad,
		)
		require.NoError(
			t,
			(&calc{Name: c.Name, Values: typed, JSON: true}).Run(streams{out: &object, err: &bad}),
			c.Name,
		)
		var said struct {
			Notes []struct{ Kind, Title, Text, Grade string }
		}
		require.NoError(t, json.Unmarshal(object.Bytes(), &said), c.Name)
		page := panel.Bench(c, "a", 2, nil)
		for _, k := range c.Cautions {
			if k == caution.Growing {
				continue // these riders are grown: calculators' own tests say when it comes
			}
			seen[k.Grade]++
			assert.Contains(t, flat(text.String()), flat(string(k.Grade.Label()+": "+k.Title+". "+k.Text)), c.Name)
			found := false
			for _, n := range said.Notes {
				found = found || n.Kind == "caution" && n.Title == string(k.Title) && n.Text == string(k.Text) &&
					n.Grade == string(k.Grade)
			}
			assert.True(t, found, "%s: JSON lacks %s with its grade", c.Name, k.Key)
			assert.True(t, strings.Contains(page, string(k.Grade.Label())), "%s: the page lacks the grade of %s",
				c.Name, k.Key)
		}
	}
	for _, g := range caution.Grades() {
		assert.Positive(t, seen[g], g)
	}
}

// TestIntakesTableHasTheGrades: a fitter who opens the table sees them as well.
func TestIntakesTableHasTheGrades(t *testing.T) {
	var out, bad bytes.Buffer
	link := "https://guide.example/#" + everywhere["much"]
	require.NoError(
		t,
		(&intakeCommand{From: []string{link}, CSV: true}).Run(streams{out: &out, err: &bad}),
		bad.String(),
	)
	rows, err := csv.NewReader(&out).ReadAll()
	require.NoError(t, err)
	graded := 0
	for _, row := range rows {
		if row[2] != "caution" {
			continue
		}
		i := slices.IndexFunc(caution.All(), func(k *caution.Caution) bool { return k.Key == row[3] })
		require.GreaterOrEqual(t, i, 0, row[3])
		k := caution.All()[i]
		assert.Equal(t, string(k.Grade.Label()+": "+k.Title), row[4])
		assert.Equal(t, string(k.Text), row[10])
		graded++
	}
	assert.Greater(t, graded, 5)
}
