//go:build !js

package calculators

import "embed"

// Code is the Go source of every calculator and model, so that a page can show
// the very function that computed its numbers, also where the command runs far
// from its source. It stands here because go:embed looks downward only; the
// engine leaves it out by the build tag above.
//
//go:embed *.go */*.go
var Code embed.FS
