package site

import (
	"html/template"
	"strings"

	"plumbline/calculators/words"
)

// hosting.html shows whoever publishes the guide the settings of web servers, ready to be
// copied: what “plumbline hosting” prints, for the guide's own path. Riders have no use for
// it, so it is linked from elsewhere.html alone.

// hostingURL is where it stands, and hostFolder where the guide lies on a server's disk.
const (
	hostingURL = "hosting.html"
	hostFolder = "/srv/guide"
)

// hostView is one server with its settings.
type hostView struct {
	Name, Title, Command string
	Settings             template.HTML
}

// hostTitles are the servers as a heading has them, and hostLanguages as what their
// settings are coloured.
var (
	hostTitles = map[string]words.Sayer{"nginx": words.Name("nginx"), "caddy": words.Name("Caddy"),
		"apache":  words.Name("Apache"),
		"storage": words.Of("Object storage, and hosts that only take files")}
	hostLanguages = map[string]string{"nginx": "nginx", "caddy": "caddyfile", "apache": "apacheconf", "storage": "text"}
)

func (g *Guide) fillHosting(v *view) {
	v.Title = g.say("Settings for a web server")
	v.Summary = g.say("How a web server sends this guide so that every page works and nothing is sent twice.")
	v.HostFolder = hostFolder
	mount := g.mount()
	if mount == "./" {
		mount = "/"
	}
	for _, name := range Hosts() {
		text, err := Hosting(name, mount, hostFolder, g.reader, g.top().Spoken()[1:]...)
		if err != nil {
			continue // an address with letters that settings read as something else: none can be shown
		}
		command := "plumbline hosting " + name
		if mount != "/" {
			command += " --path " + mount
		}
		v.Hosts = append(v.Hosts, hostView{name, hostTitles[name].Say(g.reader), command,
			trusted(inColour(strings.TrimSpace(text), hostLanguages[name]))})
	}
}
