//go:build js && wasm

// Command cockpit is the engine of the cockpit section's calculators alone, for a short first wait.
package main

import (
	"plumbline/calculators/cockpit"
	"plumbline/wasm/bridge"
)

func main() { bridge.Serve(cockpit.Calculators(), nil) }
