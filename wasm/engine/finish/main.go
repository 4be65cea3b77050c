//go:build js && wasm

// Command finish is the engine of the finish section's calculators alone, for a short first wait.
package main

import (
	"plumbline/calculators/finish"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(finish.Calculators(), nil) }
