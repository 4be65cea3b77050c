//go:build js && wasm

// Command saddle is the engine of the saddle section's calculators alone, for a short first wait.
package main

import (
	"plumbline/calculators/saddle"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(saddle.Calculators(), nil) }
