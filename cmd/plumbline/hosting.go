package main

import (
	"io"

	"plumbline/site"
	"plumbline/site/told"
)

// hosting is "plumbline hosting".
type hosting struct {
	Server string `arg:"" optional:"" help:"${hosting_server}"`
	Guide  string `arg:"" optional:"" help:"${hosting_guide}"`
	Path   string `default:"/" placeholder:"/fit/" help:"${hosting_path}"`
	Folder string `default:"/srv/guide" placeholder:"DIR" help:"${hosting_folder}"`
}

// Run prints settings for a web server.
func (h *hosting) Run(s streams) error {
	if err := s.folderThere(h.Guide); err != nil {
		return err
	}
	s.speakAs(h.Guide)
	if h.Server == "" {
		return refusal{statusUsage,
			told.Of("name the server: nginx, caddy, apache, or storage for a host that only takes files.")}
	}
	text, err := site.Hosting(h.Server, h.Path, h.Folder, s.reader(), site.LanguagesOf(h.Guide)...)
	if err != nil {
		return refusal{statusUsage, told.Of("{0}.", err)}
	}
	_, err = io.WriteString(s.out, text)
	return err
}
