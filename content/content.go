// Package content is the guide itself: its chapters in Markdown, one folder for
// each part, with the order of parts and chapters, and the sources and cautions
// that only chapters use. It holds words and no code, so that a shop can lay its
// own folder over this one, file by file, and change the guide without building
// anything.
package content

import "embed"

// Files is everything a reader sees or a chapter cites. The top level holds
// guide.yaml, sources.yaml, cautions.yaml and the front page; each folder below
// is a part with its own index.md. The folder texts has the template and the
// catalogues of what calculators and pages say in other languages.
//
//go:embed *.yaml *.md */*.md */*.csv texts de
var Files embed.FS
