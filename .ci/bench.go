//go:build ignore

// Command bench reads what "go test -bench" prints, several runs of each benchmark, and
// reports the median of each and its ratio to BenchmarkYardstick in the same run. On a
// machine that others use too, a time says little and a ratio something. It compares
// the ratios with those in testdata/bench.txt and fails where one has more than doubled;
// with -update it writes them.
package main

import (
	"bufio"
	"flag"
	"fmt"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

const kept = "testdata/bench.txt"

var line = regexp.MustCompile(`^Benchmark(\S+?)(?:-\d+)?\s+\d+\s+([\d.]+) ns/op`)

func main() {
	update := flag.Bool("update", false, "write the ratios down")
	flag.Parse()
	times, order := map[string][]float64{}, []string{}
	in := bufio.NewScanner(os.Stdin)
	for in.Scan() {
		m := line.FindStringSubmatch(in.Text())
		if m == nil {
			continue
		}
		ns, _ := strconv.ParseFloat(m[2], 64)
		if times[m[1]] == nil {
			order = append(order, m[1])
		}
		times[m[1]] = append(times[m[1]], ns)
	}
	yardstick := median(times["Yardstick"])
	if yardstick == 0 {
		fmt.Println("No yardstick among the benchmarks.")
		os.Exit(1)
	}
	before, failed := read(), false
	var b strings.Builder
	for _, name := range order {
		ratio := median(times[name]) / yardstick
		note := ""
		if was := before[name]; was > 0 && ratio > 2*was {
			note, failed = fmt.Sprintf("  *** more than twice %.3g", was), true
		}
		fmt.Printf("%-40s %10.3g ms %10.3g yardsticks%s\n", name, median(times[name])/1e6, ratio, note)
		fmt.Fprintf(&b, "%s %.3g\n", name, ratio)
	}
	if *update {
		if err := os.WriteFile(kept, []byte(b.String()), 0o644); err != nil {
			fmt.Println(err)
			os.Exit(1)
		}
		return
	}
	if failed {
		os.Exit(1)
	}
}

func median(x []float64) float64 {
	if len(x) == 0 {
		return 0
	}
	slices.Sort(x)
	return x[len(x)/2]
}

// read returns the ratios that were written down, by benchmark.
func read() map[string]float64 {
	ratios := map[string]float64{}
	text, err := os.ReadFile(kept)
	if err != nil {
		return ratios
	}
	for l := range strings.Lines(string(text)) {
		if name, ratio, ok := strings.Cut(strings.TrimSpace(l), " "); ok {
			ratios[name], _ = strconv.ParseFloat(ratio, 64)
		}
	}
	return ratios
}
