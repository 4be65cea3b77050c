package site

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// Stamp writes into each translated chapter of a guide's folder that does not say what it
// was made from the edition that its original has now. folder is that of one language. It
// tells how many it wrote.
func Stamp(guide, folder string) (wrote int, err error) {
	root := filepath.Join(guide, folder)
	err = filepath.WalkDir(root, func(file string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(file) != ".md" {
			return err
		}
		p, err := filepath.Rel(root, file)
		if err != nil {
			return err
		}
		text, err := os.ReadFile(file)
		if err != nil {
			return err
		}
		original, err := os.ReadFile(filepath.Join(guide, p))
		if err != nil {
			return err
		}
		head, at, ok := splitHeader(normal(text))
		if !ok || strings.Contains("\n"+string(head), "\noriginal:") {
			return nil
		}
		wrote++
		stamped := "---\n" + string(
			head,
		) + "original: " + edition(
			normal(original),
		) + "\n---\n" + string(
			normal(text)[at:],
		)
		return os.WriteFile(file, []byte(stamped), 0o644)
	})
	return wrote, err
}
