// Package site turns a folder of Markdown into a published guide.
//
// The work has four phases, each in its own files, and nothing flows backwards:
//
//   - load: a shop's folder is laid over the built-in content (overlay.go), its
//     settings, page headers, sources, cautions and terms are read (settings.go,
//     header.go, library.go, glossary.go);
//   - parse and check: every page becomes a tree with our four blocks and its
//     citations in it (parse.go, block.go, cite.go), and every mistake is
//     collected with its place and its remedy (check.go), all in one run;
//   - render: each tree is written once (render.go) and set into its page
//     (page.go) with rail, sources and neighbours;
//   - publish: the files are named, compressed and exchanged with the old site
//     in one step (publish.go, assets.go, exchange.go).
//
// Preview is the same pipeline kept in memory, and Handler serves what either
// of them made.
package site
