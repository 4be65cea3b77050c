// Package templates holds what every published page is made of besides its text:
// the page templates, the style sheet, the page modules, the engine's worker and
// the icon. It is data only; package site fills and writes it.
package templates

import "embed"

// Files is everything in the folders below.
//
// The top level holds the html/template files, style/ the parts of the style
// sheet in the order of Styles, page/ the modules that pages load, engine/ what
// stands beside the engine, offline/ the service worker, preview/ what only a preview adds
// to a page, book/ what the guide as a book is made of, element/ what other sites load, intake/ the
// pages of a fitter’s clients.
//
//go:embed *.html *.svg style page engine offline preview book element intake
var Files embed.FS

// Styles are the parts of the style sheet, in the order in which they are
// joined: later ones may lean on the tokens and resets of earlier ones.
var Styles = []string{
	"base.css",
	"page.css",
	"bench.css",
	"answer.css",
	"figure.css",
	"photo.css",
	"way.css",
	"finish.css",
	"setup.css",
	"print.css",
}
