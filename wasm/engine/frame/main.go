//go:build js && wasm

// Command frame is the engine of the frame section's calculators alone, for a short first wait.
package main

import (
	"plumbline/calculators/frame"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(frame.Calculators(), nil) }
