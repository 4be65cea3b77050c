//go:build js && wasm

// Command panics fails in each way that Go code can recover from, and says how.
package main

import (
	"runtime"
	"strings"
)

type shape interface{ size() int }

type box struct{ side int }

func (b box) size() int { return b.side }

// sizeOf calls a method without knowing whose.
func sizeOf(s shape) int { return s.size() }

// deep fails at the bottom of a stack that has grown and been collected.
func deep(n int, keep *[]string) int {
	if n == 0 {
		runtime.GC()
		var none []int
		return none[len(*keep)]
	}
	*keep = append(*keep, strings.Repeat("x", n))
	defer func() { _ = *keep }()
	return deep(n-1, keep) + 1
}

func main() {
	var none map[string]int
	var at *box
	var empty shape
	var one any = "text"
	zero := len(none)
	ways := []func(){
		func() { panic("said") },
		func() { none["key"] = 1 },
		func() { println(1 / zero) },
		func() { println(at.side) },
		func() { println(sizeOf(empty)) },
		func() { println(sizeOf(at)) }, // a method that wants a box, called on none
		func() { println(one.(int)) },
		func() { println(one.(shape)) },
		func() { var kept []string; println(deep(2000, &kept)) },
		func() { _ = make([]int, zero-1) },
		func() {
			defer func() { panic(recover().(error).Error() + ", and again") }()
			none["key"] = 1
		},
	}
	for _, way := range ways {
		func() {
			defer func() {
				switch r := recover().(type) {
				case error:
					println(r.Error())
				case string:
					println(r)
				}
			}()
			way()
		}()
	}
	// Other goroutines are woken and collected as ever.
	done := make(chan int)
	for i := range 100 {
		go func() { done <- len(strings.Repeat("x", i)) }()
	}
	sum := 0
	for range 100 {
		sum += <-done
		runtime.GC()
	}
	_, file, line, ok := runtime.Caller(0)
	println(sum, len(file) > 3, line > 0, ok)
}
