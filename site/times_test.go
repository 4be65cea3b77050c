package site

import (
	"os"
	"strconv"
)

// numberFrom is a whole number from the environment, or the usual one.
func numberFrom(name string, usual int) int {
	if n, err := strconv.Atoi(os.Getenv(name)); err == nil && n > 0 {
		return n
	}
	return usual
}
