// Command licences writes site/licences.txt, the licences of everything whose code
// is in the engine, in a page or in the command: go generate ./site
//
// With -bom FILE it adds to a bill of materials, which lists Go modules, what else is in
// them: go run ./site/licences -bom FILE, in the folder of the source.
package main

import (
	"bytes"
	"cmp"
	"encoding/json"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"log"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"

	"plumbline/templates"
)

// work is one work with its licence.
type work struct {
	name  string   // with its version
	in    []string // the engine, the pages, the command
	texts []string // the licence, and the notices that it asks to be handed on
	taken bool     // it is no Go module, but stands in this source tree
}

// targets are the programs that are handed to others, each on every system for
// which it is built.
var targets = []struct{ in, packages, system, processor string }{
	{"the engine", "./wasm/engine/whole", "js", "wasm"},
	{"the command", "./cmd/plumbline", "linux", "amd64"},
	{"the command", "./cmd/plumbline", "darwin", "arm64"},
	{"the command", "./cmd/plumbline", "windows", "amd64"},
}

func main() {
	log.SetFlags(0)
	bill := flag.String("bom", "", "the bill of materials that is completed, in CycloneDX's JSON")
	flag.Parse()
	if *bill != "" {
		if err := complete(*bill, "."); err != nil {
			log.Fatal(err)
		}
		return
	}
	text, err := gather("..") // go generate runs in site
	if err != nil {
		log.Fatal(err)
	}
	if err := os.WriteFile("licences.txt", text, 0o644); err != nil {
		log.Fatal(err)
	}
}

// gather returns the text for the source tree at root.
func gather(root string) ([]byte, error) {
	own, err := project(root)
	if err != nil {
		return nil, err
	}
	pages, err := inPages(templates.Files)
	if err != nil {
		return nil, err
	}
	modules, err := inPrograms(root)
	if err != nil {
		return nil, err
	}
	var b bytes.Buffer
	b.WriteString("The licences of everything whose code is in this guide’s pages, in its engine\n" +
		"(engine.wasm) or in the command that publishes it.\n")
	for _, w := range slices.Concat(own, pages, modules) {
		fmt.Fprintf(&b, "\n%s\n%s\nin %s\n", strings.Repeat("=", 80), w.name, strings.Join(w.in, ", "))
		for _, t := range w.texts {
			fmt.Fprintf(&b, "\n%s\n", strings.TrimSpace(strings.ReplaceAll(t, "\r\n", "\n")))
		}
	}
	return b.Bytes(), nil
}

// project returns the project itself and Go, whose runtime and standard library are
// part of every program and whose wasm_exec.js starts the engine in a page.
func project(root string) ([]work, error) {
	out, err := goTool(root, nil, "env", "GOROOT")
	if err != nil {
		return nil, err
	}
	own := work{name: "Plumbline", in: []string{"the pages", "the engine", "the command"}}
	if own.texts, err = legal(root); err != nil {
		return nil, err
	}
	golang := work{name: "Go, its runtime, standard library and wasm_exec.js", in: own.in}
	golang.texts, err = legal(strings.TrimSpace(string(out)))
	return []work{own, golang}, err
}

// kept matches the comment with which a script that was taken over begins: the name
// and version up to the first comma, then the licence.
var kept = regexp.MustCompile(`(?s)\A/\*!\s*(([^,\n]+),.*?)\*/`)

// inPages returns the libraries among the scripts of the pages.
func inPages(files fs.FS) (list []work, err error) {
	err = fs.WalkDir(files, ".", func(p string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || path.Ext(p) != ".js" {
			return err
		}
		b, err := fs.ReadFile(files, p)
		if m := kept.FindSubmatch(b); m != nil {
			list = append(list, work{string(m[2]), []string{"the pages"}, []string{string(m[1])}, true})
		}
		return err
	})
	return list, err
}

// listed is what go list says of a package.
type listed struct {
	Dir    string
	Module *struct {
		Path, Version, Dir string
		Main               bool
		Replace            *struct{ Path, Version string }
	}
}

// inPrograms returns the modules that the programs are linked from, by name.
func inPrograms(root string) ([]work, error) {
	found := map[string]*work{}
	for _, t := range targets {
		out, err := goTool(root, []string{"GOOS=" + t.system, "GOARCH=" + t.processor}, "list", "-deps",
			"-json=Dir,Module", t.packages)
		if err != nil {
			return nil, err
		}
		for read := json.NewDecoder(bytes.NewReader(out)); ; {
			var p listed
			if err := read.Decode(&p); errors.Is(err, io.EOF) {
				break
			} else if err != nil {
				return nil, err
			}
			if p.Module != nil && p.Module.Main {
				// What is from elsewhere and stands in a package of our own has its licence
				// there, which begins with its name and version up to the first comma.
				taken, err := os.ReadFile(filepath.Join(p.Dir, "LICENSE"))
				if name, _, ok := strings.Cut(string(taken), ","); err == nil && ok && p.Dir != p.Module.Dir {
					found[name] = &work{name, []string{t.in}, []string{string(taken)}, true}
				}
				continue
			}
			if p.Module == nil {
				continue
			}
			name := p.Module.Path + " " + p.Module.Version
			if r := p.Module.Replace; r != nil {
				name = strings.TrimSpace(name + ", replaced by " + r.Path + " " + r.Version)
			}
			w := found[name]
			if w == nil {
				w = &work{name: name}
				found[name] = w
				if w.texts, err = legal(p.Module.Dir); err != nil {
					return nil, err
				}
			}
			if !slices.Contains(w.in, t.in) {
				w.in = append(w.in, t.in)
			}
			// A package that was taken over from elsewhere has a licence beside it.
			for dir := p.Dir; len(dir) > len(p.Module.Dir); dir = filepath.Dir(dir) {
				more, err := texts(dir)
				if err != nil {
					return nil, err
				}
				for _, t := range more {
					if !slices.Contains(w.texts, t) {
						w.texts = append(w.texts, t)
					}
				}
			}
		}
	}
	var list []work
	for _, w := range found {
		list = append(list, *w)
	}
	slices.SortFunc(list, func(a, b work) int { return cmp.Compare(a.name, b.name) })
	return list, nil
}

// named matches the names of files that tell under which terms code may be used.
var named = regexp.MustCompile(`(?i)^(licen[cs]e|copying|copyright|notice|patents|attrib)[^/]*$`)

// legal returns the texts in a folder, of which there has to be at least one.
func legal(dir string) ([]string, error) {
	list, err := texts(dir)
	if err == nil && len(list) == 0 {
		err = fmt.Errorf("%s has no licence file; nothing without a licence may be handed on", dir)
	}
	return list, err
}

// texts returns the texts in a folder, in the order of their names.
func texts(dir string) (list []string, err error) {
	files, err := os.ReadDir(dir)
	if err != nil {
		return nil, err
	}
	for _, f := range files {
		ext := filepath.Ext(f.Name())
		if f.IsDir() || !named.MatchString(f.Name()) || ext != "" && ext != ".md" && ext != ".txt" {
			continue
		}
		b, err := os.ReadFile(filepath.Join(dir, f.Name()))
		if err != nil {
			return nil, err
		}
		list = append(list, string(b))
	}
	return list, nil
}

// goTool runs the go command at root and returns what it prints.
func goTool(root string, env []string, args ...string) ([]byte, error) {
	cmd := exec.Command("go", args...)
	cmd.Dir = root
	cmd.Env = append(append(os.Environ(), "GOWORK=off"), env...)
	var said strings.Builder
	cmd.Stderr = &said
	out, err := cmd.Output()
	if err != nil {
		err = fmt.Errorf("go %s: %w\n%s", strings.Join(args, " "), err, said.String())
	}
	return out, err
}
