package site

import (
	"bytes"
	"fmt"
	"slices"
	"strings"

	"github.com/goccy/go-yaml/ast"
	"github.com/goccy/go-yaml/token"

	"plumbline/calculators/words"
	"plumbline/site/colour"
	"plumbline/site/told"
	"plumbline/templates"
)

// A guide has two colours of its own besides paper and ink. Each has a job, and each is
// checked for contrast wherever it does it: on a light and on a dark screen, and on paper.

// job is what one of a shop's colours is for, by the names of the style sheet.
type job struct {
	key    string // in guide.yaml; with _dark behind it, for a dark screen
	says   words.English
	token  string   // the colour in the style sheet
	ground []string // what it stands on
	tint   string   // a ground that is made of it, or ""
}

var jobs = []job{
	{key: "first", says: "what the reader sets, and the main answer", token: "hot", ground: []string{"paper", "sheet"}},
	{key: "second", says: "the rider in the drawings", token: "body", ground: []string{"paper", "sheet"}, tint: "wash"},
}

// tintShare is how much of a colour is in the ground that is made of it.
const tintShare = 0.11

// schemes are what a page is shown on. Its style sheet has a set of colours for each.
var schemes = []string{"light", "dark", "print"}

// brand are a shop's colours and its mark, as the style sheet and the pages need them.
type brand struct {
	colours map[string]map[string]string // scheme to token to colour; nil for the built-in ones
	mark    item                         // the mark's file in the shop's folder; no text for none
	drawn   *mark
}

// given is a colour that guide.yaml names.
type given struct {
	colour colour.Colour
	at     *token.Token
}

// colours reads a shop's colours. For a dark screen a colour may be left out: the
// nearest one that can be read there stands in for it.
func (y *yamlReader) colours(e entry) map[string]map[string]string {
	named := map[string]given{}
	var keys []string
	for _, j := range jobs {
		keys = append(keys, j.key, j.key+"_dark")
	}
	for _, x := range y.Mapping(e.Value, told.Of("“{0}”", e.Key)) {
		if !y.Known(x, keys...) {
			continue
		}
		if _, none := x.Value.(*ast.NullNode); none {
			y.Mistake(x.At,
				told.Of("“{0}” has no colour; what stands behind a # is a comment unless it is in quotes", x.Key),
				told.Of("put the colour in quotes: {0}", `"#0b5d3b"`))
			continue
		}
		c, err := colour.Parse(y.Raw(x))
		if err != nil {
			y.Mistake(x.Value.GetToken(), told.Of("“{0}” is no colour", y.Raw(x)),
				told.Of("write # and six digits or letters from a to f, in quotes: \"#0b5d3b\""))
			continue
		}
		named[x.Key] = given{c, x.Value.GetToken()}
	}
	all := map[string]map[string]string{}
	for _, scheme := range schemes {
		all[scheme] = map[string]string{}
	}
	for _, j := range jobs {
		light, ok := named[j.key]
		if !ok {
			if dark, alone := named[j.key+"_dark"]; alone {
				y.Mistake(
					dark.at,
					told.Of("“{0}_dark” is given and “{1}” is not", j.key, j.key),
					told.Of("give both, or only “{0}”", j.key),
				)
			}
			continue
		}
		dark, has := named[j.key+"_dark"]
		for _, on := range []struct {
			given
			schemes []string
			own     bool // whether the shop named it for these
		}{{light, []string{"light", "print"}, true}, {dark, []string{"dark"}, has}} {
			if !on.own {
				on.given = light
			}
			y.colour(j, on.given, on.own, on.schemes, all)
		}
	}
	return all
}

// colour takes a colour for some schemes, or the nearest one that can be read there where
// the shop left that open.
func (y *yamlReader) colour(j job, c given, own bool, on []string, all map[string]map[string]string) {
	lacks := func(c colour.Colour) words.Text {
		for _, scheme := range on {
			if what := j.lacks(scheme, c); !what.None() {
				return what
			}
		}
		return words.Text{}
	}
	near, found := c.colour.Nearest(func(c colour.Colour) bool { return lacks(c).None() })
	if !found {
		y.Mistake(
			c.at,
			told.Of("“{0}” cannot be read {1}", c.colour.String(), schemeNames[on[0]]),
			told.Of("choose another colour"),
		)
		return
	}
	if own && near != c.colour {
		y.Mistake(
			c.at,
			told.Of(
				"“{0}” is for {1}, and cannot be read well enough: {2}",
				c.colour.String(),
				j.says,
				lacks(c.colour),
			),
			told.Of("the nearest colour that can is {0}", near.String()),
		)
	}
	for _, scheme := range on {
		all[scheme][j.token] = near.String()
		if j.tint != "" {
			all[scheme][j.tint] = j.tinted(scheme, near).String()
		}
	}
}

// lacks says where a colour has too little contrast for its job, "" where it has enough.
func (j job) lacks(scheme string, c colour.Colour) words.Text {
	try := func(front, ground colour.Colour, name words.Text) words.Text {
		if got := colour.Contrast(front, ground); got < colour.Text {
			return told.Of("{0} to 1 {1} {2}, and {3} is needed", told.Tenths(got), schemeNames[scheme], name,
				told.Tenths(colour.Text))
		}
		return words.Text{}
	}
	for _, name := range j.ground {
		if what := try(c, house(scheme, name), told.Of("({0} {1})", name, house(scheme, name))); !what.None() {
			return what
		}
	}
	if j.tint == "" {
		return words.Text{}
	}
	ground := j.tinted(scheme, c)
	if what := try(c, ground, told.Of("on a tint of itself")); !what.None() {
		return what
	}
	return try(house(scheme, "ink"), ground, told.Of("for the text on a tint of it"))
}

var schemeNames = map[string]words.English{
	"light": "on a light screen",
	"dark":  "on a dark screen",
	"print": "on paper",
}

// tinted is the ground that is made of a colour. Paper stays white.
func (j job) tinted(scheme string, c colour.Colour) colour.Colour {
	if scheme == "print" {
		return house(scheme, j.tint)
	}
	return colour.Tinted(house(scheme, "sheet"), c, tintShare)
}

// house is one of the style sheet's own colours.
func house(scheme, token string) colour.Colour {
	light, dark, paper := templates.Colours()
	c, err := colour.Parse(map[string]map[string]string{"light": light, "dark": dark, "print": paper}[scheme][token])
	if err != nil {
		panic("the style sheet has no colour --" + token + " for " + scheme) // a test asks for each
	}
	return c
}

// css is what is added to the style sheet for a shop's colours.
func (b brand) css() []byte {
	var out bytes.Buffer
	for _, scheme := range schemes {
		tokens := b.colours[scheme]
		if len(tokens) == 0 {
			continue
		}
		var names []string
		for name := range tokens {
			names = append(names, name)
		}
		slices.Sort(names)
		var list strings.Builder
		for _, name := range names {
			fmt.Fprintf(&list, "--%s:%s;", name, tokens[name])
		}
		switch scheme {
		case "light":
			fmt.Fprintf(&out, ":root{%s}\n", list.String())
		case "dark":
			fmt.Fprintf(&out, "@media (prefers-color-scheme:dark){:root{%s}}\n", list.String())
		default:
			fmt.Fprintf(&out, "@media print{:root{%s}}\n", list.String())
		}
	}
	return out.Bytes()
}

// icon is the guide's picture for tabs and bookmarks: the built-in one in the shop's
// colour, where the shop has no mark.
func (b brand) icon() ([]byte, error) {
	icon, err := templates.Files.ReadFile("icon.svg")
	if c := b.colours["light"]["hot"]; c != "" {
		icon = bytes.ReplaceAll(icon, []byte(house("light", "hot").String()), []byte(c))
	}
	return icon, err
}
