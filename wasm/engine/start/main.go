//go:build js && wasm

// Command start is the engine of the start section's calculators alone, for a short first wait.
package main

import (
	"plumbline/calculators/start"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(start.Calculators(), nil) }
