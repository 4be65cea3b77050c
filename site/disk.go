package site

import (
	"errors"
	"os"
)

// disk does what a publication does with files and folders. It exists so that a test can
// let every one of these steps fail in its turn: fault is asked before each, with the
// step's name and the file's. A nil fault never fails.
type disk struct {
	fault func(step, name string) error
}

func (d disk) fails(step, name string) error {
	if d.fault == nil {
		return nil
	}
	return d.fault(step, name)
}

func (d disk) open(name string) (*os.File, error) {
	if err := d.fails("open", name); err != nil {
		return nil, err
	}
	return os.OpenFile(name, os.O_CREATE|os.O_RDWR, 0o644)
}

func (d disk) folder(name string) error {
	return errors.Join(d.fails("folder", name), os.MkdirAll(name, 0o755))
}

// stage makes a new folder that all may read.
func (d disk) stage(above, prefix string) (string, error) {
	if err := d.fails("stage", above); err != nil {
		return "", err
	}
	name, err := os.MkdirTemp(above, prefix)
	if err != nil {
		return "", err
	}
	if err := errors.Join(d.fails("rights", name), os.Chmod(name, 0o755)); err != nil {
		return "", errors.Join(err, d.remove(name))
	}
	return name, nil
}

// write writes a file. A fault leaves half of it, as a full disk does.
func (d disk) write(name string, data []byte) error {
	if err := d.fails("write", name); err != nil {
		return errors.Join(err, os.WriteFile(name, data[:len(data)/2], 0o644))
	}
	return os.WriteFile(name, data, 0o644)
}

func (d disk) link(from, to string) error {
	if err := d.fails("link", to); err != nil {
		return err
	}
	return os.Link(from, to)
}

func (d disk) read(name string) ([]byte, error) {
	if err := d.fails("read", name); err != nil {
		return nil, err
	}
	return os.ReadFile(name)
}

func (d disk) rename(from, to string) error {
	if err := d.fails("rename", to); err != nil {
		return err
	}
	return os.Rename(from, to)
}

func (d disk) remove(name string) error {
	if err := d.fails("remove", name); err != nil {
		return err
	}
	return os.RemoveAll(name)
}
