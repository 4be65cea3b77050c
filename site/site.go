// Package site turns a folder of Markdown into a published guide.
//
// The work has four phases, each in its own files; a phase uses only earlier ones:
//
//   - load: a shop's folder is laid over the built-in content (overlay.go), its
//     settings, page headers, sources, cautions and terms are read (settings.go,
//     header.go, library.go, glossary.go);
//   - parse and check: every page becomes a tree with its fenced blocks and
//     citations (parse.go, block.go, cite.go), and every mistake is
//     collected with its place and its remedy (check.go), all in one run;
//   - render: each tree is written once (render.go) and put into the page
//     template with navigation and sources (view.go, lists.go);
//   - publish: the files are named, compressed and exchanged with the old site
//     in one step (build.go, compress.go, publish.go, exchange.go).
//
// Preview is the same pipeline kept in memory, and Handler serves what either
// of them made.
package site
