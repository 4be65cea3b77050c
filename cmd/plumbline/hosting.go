package main

import (
	"io"

	"plumbline/site"
)

// hosting is "plumbline hosting".
type hosting struct {
	Server string `arg:"" help:"nginx, caddy, apache, or storage for a host that only takes files."`
	Path   string `default:"/" placeholder:"/fit/" help:"Where the guide is on the server."`
	Folder string `default:"/srv/guide" placeholder:"DIR" help:"Where it lies on the server's disk."`
}

// Run prints settings for a web server.
func (h *hosting) Run(s streams) error {
	text, err := site.Hosting(h.Server, h.Path, h.Folder)
	if err != nil {
		return refusal{statusUsage, err.Error() + "."}
	}
	_, err = io.WriteString(s.out, text)
	return err
}
