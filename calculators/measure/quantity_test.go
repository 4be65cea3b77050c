package measure_test

import (
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"plumbline/calculators/measure"
)

func TestEveryQuantityIsWhole(t *testing.T) {
	key := regexp.MustCompile(`^[a-z]+(-[a-z]+)*$`)
	keys, labels, hows := map[string]bool{}, map[string]bool{}, map[string]bool{}
	for _, q := range measure.All() {
		assert.Regexp(t, key, q.Key)
		assert.False(t, keys[q.Key], "the key %s stands twice", q.Key)
		assert.False(t, labels[strings.ToLower(string(q.Label))], "the label %s stands twice", q.Label)
		assert.False(t, hows[string(q.How.Text)], "%s is taken like another", q.Key)
		keys[q.Key], labels[strings.ToLower(string(q.Label))], hows[string(q.How.Text)] = true, true, true

		assert.NotEmpty(t, q.Label, q.Key)
		assert.LessOrEqual(t, len(q.Label), 42, "%s: a label has to fit beside a field", q.Key)
		assert.True(t, strings.HasSuffix(string(q.How.Text), "."), "%s: how it is taken is a sentence: %q", q.Key,
			q.How.Text)
		assert.NotContains(t, q.How.Text+q.How.Slip+q.How.Why+q.Label, "!", q.Key)
		assert.NotContains(t, q.How.Text+q.How.Slip+q.How.Why+q.Label, "{", "%s: a brace would be a hole", q.Key)

		require.NotNil(t, q.Unit, q.Key)
		assert.LessOrEqual(t, q.Least, q.Low, q.Key)
		assert.Less(t, q.Low, q.High, q.Key)
		assert.LessOrEqual(t, q.High, q.Most, q.Key)
		assert.GreaterOrEqual(t, q.Repeat, 0.0, q.Key)
		assert.Less(t, q.Repeat, (q.High-q.Low)/3, "%s: a repeat error as large as the range", q.Key)
	}
}

func TestChoicesAndTablesAreWhole(t *testing.T) {
	for _, q := range measure.All() {
		seen := map[string]bool{}
		for _, c := range q.Choices {
			assert.False(t, seen[c.Key] || c.Key == "" || c.Label == "", "%s: %v", q.Key, c)
			seen[c.Key] = true
		}
		if q.Is() == measure.Pick {
			assert.Greater(t, len(q.Choices), 1, q.Key)
			assert.Equal(t, float64(len(q.Choices)-1), q.Most, q.Key)
		}
		if q.Is() == measure.List {
			assert.Positive(t, q.Rows, q.Key)
		}
		for _, c := range q.Columns {
			require.NotNil(t, c.Quantity, q.Key)
			assert.Equal(t, measure.Number, c.Is(), "%s: column %s", q.Key, c.Key)
			assert.Same(t, c.Quantity, measure.Named(c.Key), q.Key)
			assert.False(t, seen[c.Key], "%s: column %s stands twice", q.Key, c.Key)
			seen[c.Key] = true
		}
	}
}

func TestTheChosenLengthIsFoundByItsIndex(t *testing.T) {
	require.Len(t, measure.Wanted.Choices, len(measure.RiderLengths))
	for i, c := range measure.Wanted.Choices {
		assert.Equal(t, measure.RiderLengths[i].Key, c.Key)
		assert.Same(t, measure.Mm, measure.RiderLengths[i].Unit)
	}
}

func TestThePartAfterAChangeHasTheSameRanges(t *testing.T) {
	for _, q := range measure.All() {
		if old, is := strings.CutPrefix(q.Key, "new-"); is {
			was := measure.Named(old)
			require.NotNil(t, was, q.Key)
			assert.Equal(t, [5]float64{was.Low, was.High, was.Least, was.Most, was.Repeat}, [5]float64{q.Low,
				q.High, q.Least, q.Most, q.Repeat}, q.Key)
			assert.Same(t, was.Unit, q.Unit, q.Key)
		}
	}
}

// Half the low end to one and a half times the high end never shuts out a real
// rider, so the rider's own lengths must not be narrower.
func TestNoRealRiderIsShutOut(t *testing.T) {
	for _, q := range measure.RiderLengths {
		if q != measure.LegDifference {
			assert.LessOrEqual(t, q.Least, q.Low/2, q.Key)
			assert.GreaterOrEqual(t, q.Most, q.High*1.5, q.Key)
		}
	}
	// The extremes of measured people of the 2012 survey (mean ± 5 SD, men and
	// women; Gordon et al. 2014) lie well inside.
	for q, ends := range map[*measure.Quantity][2]float64{
		measure.Stature:          {1628.5 - 5*64.2, 1756.2 + 5*68.6},
		measure.Inseam:           {782.3 - 5*44.6, 845.9 + 5*46.5},
		measure.TrochanterHeight: {845.4 - 5*44.7, 900.9 + 5*49.2},
		measure.KneeHeight:       {465.9 - 5*27.1, 491.7 + 5*26.6},
		measure.TrunkLength:      {489.7 - 5*29.3, 539.8 + 5*33.4},
		measure.ArmSpan:          {1660.3 - 5*83.0, 1814.2 + 5*84.6},
		measure.ShoulderWidth:    {365.3 - 5*18.3, 415.7 + 5*19.2},
		measure.ThighLength:      {379.4 - 5*24.0, 409.3 + 5*28.4},
		measure.ShankLength:      {403.2 - 5*25.9, 418.8 + 5*24.6},
		measure.FootLength:       {246.3 - 5*12.4, 271.2 + 5*13.1},
		measure.HeelToBallInner:  {182.1 - 5*9.6, 200.9 + 5*10.5},
		measure.HandLength:       {181.1 - 5*10.1, 193.3 + 5*9.9},
		measure.Mass:             {67.8 - 4*11.0, 85.5 + 5*14.2},
	} {
		assert.True(t, q.Possible(ends[0]) && q.Possible(ends[1]), "%s: %v", q.Key, ends)
	}
}

// The means of the same survey are plausible, and so are mean ± 2 SD.
func TestMostMeasuredPeopleNeedNoSecondLook(t *testing.T) {
	for q, s := range map[*measure.Quantity][4]float64{ // mean and SD of women, of men
		measure.Stature:          {1628.5, 64.2, 1756.2, 68.6},
		measure.Mass:             {67.8, 11.0, 85.5, 14.2},
		measure.Inseam:           {782.3, 44.6, 845.9, 46.5},
		measure.TrochanterHeight: {845.4, 44.7, 900.9, 49.2},
		measure.KneeHeight:       {465.9, 27.1, 491.7, 26.6},
		measure.TrunkLength:      {489.7, 29.3, 539.8, 33.4},
		measure.ArmSpan:          {1660.3, 83.0, 1814.2, 84.6},
		measure.ShoulderWidth:    {365.3, 18.3, 415.7, 19.2},
		measure.ThighLength:      {379.4, 24.0, 409.3, 28.4},
		measure.ShankLength:      {403.2, 25.9, 418.8, 24.6},
		measure.FootLength:       {246.3, 12.4, 271.2, 13.1},
		measure.HeelToBallInner:  {182.1, 9.6, 200.9, 10.5},
		measure.HandLength:       {181.1, 10.1, 193.3, 9.9},
	} {
		assert.True(t, q.Plausible(s[0]-2*s[1]) && q.Plausible(s[2]+2*s[3]), q.Key)
	}
}

// declared reads the package's own source for its exported variables that hold a
// quantity: everything made by a call or literal, units apart.
func declared(t *testing.T) []string {
	paths, err := filepath.Glob("*.go")
	require.NoError(t, err)
	var names []string
	for _, path := range paths {
		if strings.HasSuffix(path, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		require.NoError(t, err)
		for _, d := range file.Decls {
			g, is := d.(*ast.GenDecl)
			if !is || g.Tok != token.VAR {
				continue
			}
			for _, s := range g.Specs {
				v := s.(*ast.ValueSpec)
				for i, n := range v.Names {
					if n.IsExported() && !isUnit(v.Values[i]) && n.Name != "RiderLengths" {
						names = append(names, n.Name)
					}
				}
			}
		}
	}
	return names
}

// isUnit tells a &Unit{…} or a &Tabular{…} from everything else.
func isUnit(e ast.Expr) bool {
	u, is := e.(*ast.UnaryExpr)
	if !is {
		return false
	}
	l, is := u.X.(*ast.CompositeLit)
	if !is {
		return false
	}
	id, is := l.Type.(*ast.Ident)
	return is && (id.Name == "Unit" || id.Name == "Tabular")
}

// listed reads which variables all.go names.
func listed(t *testing.T) []string {
	file, err := parser.ParseFile(token.NewFileSet(), "all.go", nil, 0)
	require.NoError(t, err)
	var names []string
	ast.Inspect(file, func(n ast.Node) bool {
		if v, is := n.(*ast.ValueSpec); is && v.Names[0].Name == "all" {
			for _, e := range v.Values[0].(*ast.CompositeLit).Elts {
				names = append(names, e.(*ast.Ident).Name)
			}
		}
		return true
	})
	return names
}

func TestAllLeavesNoQuantityOut(t *testing.T) {
	assert.ElementsMatch(t, declared(t), listed(t))
	assert.Len(t, measure.All(), len(listed(t)))
}

// A key is its variable's name in lower case, so that whoever knows one knows the
// other. The choice "quantity" cannot be called Quantity, which is the type.
func TestTheGoNameIsTheKey(t *testing.T) {
	names := listed(t)
	for i, q := range measure.All() {
		if q == measure.Wanted {
			continue
		}
		assert.Equal(t, strings.ReplaceAll(q.Key, "-", ""), strings.ToLower(names[i]))
	}
}

func TestAQuantityIsFoundByItsKey(t *testing.T) {
	for _, q := range measure.All() {
		assert.Same(t, q, measure.Named(q.Key))
	}
	assert.Nil(t, measure.Named("no-such-thing"))
	assert.Nil(t, measure.Named(""))
}

func TestAllCannotBeSpoiltByItsCaller(t *testing.T) {
	list := measure.All()
	list[0] = nil
	assert.NotNil(t, measure.All()[0])
}
