//go:build js && wasm

// Command feet is the engine of the feet section's calculators alone, for a short first wait.
package main

import (
	"plumbline/calculators/feet"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(feet.Calculators(), nil) }
