package site

import (
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"golang.org/x/text/language"

	"plumbline/calculators/words"
	"plumbline/content"
	"plumbline/site/told"
)

// What a web server has to send with a guide is said once, here: the preview sends it
// (handler.go), and the settings for other servers are written from it.

// area is a piece of a published guide that is sent alike.
type area struct {
	under   string // the paths that begin so; a whole path where it has no slash at its end
	keep    string // Cache-Control
	foreign bool   // pages elsewhere may show or load it
}

const (
	keepAsking  = "no-cache" // kept, and asked for again each time
	keepForGood = "public, max-age=31536000, immutable"
)

// areas are those of a guide, the particular ones first. The last is all the rest. Each of
// its languages has calculators for other pages in its own folder; those of the built-in
// guide are always named, so that the settings hold when one is added.
func areas(languages []string) []area {
	languages = slices.Concat(languages, builtInFolders())
	slices.Sort(languages)
	list := []area{{under: "assets/", keep: keepForGood}}
	for _, tag := range append([]string{""}, slices.Compact(languages)...) {
		in := ""
		if tag != "" {
			in = tag + "/"
		}
		list = append(list, area{under: in + embedFolder, keep: keepAsking, foreign: true},
			area{under: in + elementURL, keep: keepAsking, foreign: true})
	}
	return append(list, area{keep: keepAsking})
}

// builtInFolders are the folders of the built-in guide’s other languages.
var builtInFolders = sync.OnceValue(func() (list []string) {
	said, _ := fs.Glob(content.Files, "*/"+settingsFile) // the pattern is a good one
	for _, p := range said {
		list = append(list, path.Dir(p))
	}
	return list
})

// areaOf is the area of a path. Whatever folder is named like a language is taken for one.
func areaOf(p string) area {
	var languages []string
	if folder, _, ok := strings.Cut(p, "/"); ok {
		if tag, err := language.Parse(folder); err == nil && tag != language.Und {
			languages = append(languages, folder)
		}
	}
	list := areas(languages)
	return list[slices.IndexFunc(list, func(a area) bool {
		return a.under == "" || p == a.under || strings.HasSuffix(a.under, "/") && strings.HasPrefix(p, a.under)
	})]
}

// sent are the headers of an area, but for the type and the coding.
func (a area) sent() [][2]string {
	ancestors, origin := "'none'", "same-origin"
	if a.foreign {
		ancestors, origin = "*", "cross-origin"
	}
	return [][2]string{
		{"Content-Security-Policy", policy + "; frame-ancestors " + ancestors},
		{"X-Content-Type-Options", "nosniff"},
		{"Referrer-Policy", "no-referrer"},
		{"Cross-Origin-Opener-Policy", "same-origin"},
		{"Cross-Origin-Resource-Policy", origin},
		{"Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()"},
	}
}

// host is where a guide is put.
type host struct {
	mount  string        // path on the server, with a slash at both ends
	folder string        // on its disk, without a slash at the end
	reader *words.Reader // of the comments
	areas  []area
}

// comment writes a text as comments.
func (h host) comment(b *strings.Builder, english words.English, holes ...any) {
	comment(b, told.Of(english, holes...).Say(h.reader))
}

// hosts write the settings for kinds of servers.
var hosts = map[string]func(host) string{"nginx": nginx, "caddy": caddy, "apache": apache, "storage": storage}

// Hosts are the kinds of servers that Hosting knows.
func Hosts() []string { return []string{"nginx", "caddy", "apache", "storage"} }

// Hosting returns the settings with which a web server sends a guide as it should be
// sent. mount is the path of the guide on the server, like /fit/, and folder where it
// lies there; languages are those of the guide.
func Hosting(server, mount, folder string, r *words.Reader, languages ...string) (string, error) {
	write, ok := hosts[server]
	if !ok {
		return "", told.Wrong("there is nothing about “{0}” here; the servers are {1}", server, listed(Hosts()))
	}
	mount = path.Clean("/" + mount)
	if mount != "/" {
		mount += "/"
	}
	for _, s := range []string{mount, folder} {
		if strings.ContainsAny(s, "\"'\n{};$ #\\<>") {
			return "", told.Wrong(
				"“{0}” has a letter that settings of servers read as something else; choose another path",
				s,
			)
		}
	}
	return write(host{mount, strings.TrimRight(folder, "/"), r, areas(languages)}), nil
}

// endings are the endings of files with their types, sorted.
func endings() (list []string) {
	for ext := range kinds {
		list = append(list, ext)
	}
	slices.Sort(list)
	return list
}

func nginx(h host) string {
	var b strings.Builder
	h.comment(&b, "nginx: put this file beside your settings and name it in the server block of your site:")
	b.WriteString("#\n#     include /etc/nginx/guide.conf;\n#\n")
	h.comment(
		&b,
		"The compressed copies need gzip_static, which is in every nginx. For the smaller ones add the module "+
			"ngx_brotli (Debian: libnginx-mod-http-brotli-static) and take the # away before brotli_static.",
	)
	fmt.Fprintf(&b, "\nlocation = %s.plumbline { return 404; }\n", h.mount)
	for _, a := range h.areas {
		match := "^~ " + h.mount + a.under
		at := h.folder + "/" + a.under
		if a.under != "" && !strings.HasSuffix(a.under, "/") {
			match = "= " + h.mount + a.under
		}
		fmt.Fprintf(&b, "\nlocation %s {\n    alias %s;\n    index index.html;\n    absolute_redirect off;\n"+
			"    error_page 404 %s%s;\n    gzip_static on;\n    #brotli_static on;\n    gzip_vary on;\n    types {\n",
			match, at, h.mount, lostURL)
		for _, ext := range endings() {
			kind, _, _ := strings.Cut(kinds[ext], ";")
			fmt.Fprintf(&b, "        %s %s;\n", kind, ext[1:])
		}
		b.WriteString("    }\n    charset utf-8;\n    charset_types text/css text/javascript text/csv text/plain;\n")
		for _, x := range append(a.sent(), [2]string{"Cache-Control", a.keep}) {
			fmt.Fprintf(&b, "    add_header %s \"%s\" always;\n", x[0], x[1])
		}
		b.WriteString("}\n")
	}
	return b.String()
}

func caddy(h host) string {
	var b strings.Builder
	h.comment(&b, "Caddy: put this into the block of your site in the Caddyfile.")
	matcher := func(a area, i int) string {
		name := fmt.Sprintf("@guide%d", i)
		p := h.mount + a.under
		if a.under == "" || strings.HasSuffix(a.under, "/") {
			p += "*"
		}
		fmt.Fprintf(&b, "%s {\n\tpath %s\n", name, p)
		for _, other := range h.areas[:i] {
			if a.under == "" {
				star := ""
				if strings.HasSuffix(other.under, "/") {
					star = "*"
				}
				fmt.Fprintf(&b, "\tnot path %s%s%s\n", h.mount, other.under, star)
			}
		}
		b.WriteString("}\n")
		return name
	}
	for i, a := range h.areas {
		name := matcher(a, i)
		fmt.Fprintf(&b, "header %s {\n", name)
		for _, x := range append(a.sent(), [2]string{"Cache-Control", a.keep}) {
			fmt.Fprintf(&b, "\t%s \"%s\"\n", x[0], x[1])
		}
		b.WriteString("}\n")
	}
	for _, ext := range endings() {
		fmt.Fprintf(&b, "header %s*%s Content-Type \"%s\"\n", h.mount, ext, kinds[ext])
	}
	files := func(indent string) string {
		return indent + "@writing not method GET HEAD\n" + indent + "respond @writing 405\n" +
			indent + "root * " + h.folder + "\n" + indent + "file_server {\n" + indent + "\tprecompressed br " +
			"gzip\n" +
			indent + "\thide .plumbline\n" + indent + "}\n"
	}
	if h.mount == "/" {
		b.WriteString(files(""))
	} else {
		fmt.Fprintf(&b, "redir %s %s 301\nhandle_path %s* {\n%s}\n", strings.TrimRight(h.mount, "/"), h.mount, h.mount,
			files("\t"))
	}
	fmt.Fprintf(&b, "handle_errors {\n\t@lost expression "+
		"`{err.status_code} == 404 && {http.request.orig_uri.path}.startsWith(\"%s\")`\n"+
		"\thandle @lost {\n\t\theader Content-Type \"%s\"\n", h.mount, kinds[".html"])
	for _, x := range append(h.areas[len(h.areas)-1].sent(), [2]string{"Cache-Control", keepAsking}) {
		fmt.Fprintf(&b, "\t\theader %s \"%s\"\n", x[0], x[1])
	}
	fmt.Fprintf(&b, "\t\troot * %s\n\t\trewrite * /%s\n\t\tfile_server\n\t}\n}\n", h.folder, lostURL)
	return b.String()
}

func apache(h host) string {
	var b strings.Builder
	h.comment(
		&b,
		"Apache: save this as .htaccess in the guide’s folder (AllowOverride All), or put it into a <Directory> "+
			"block of your site. It needs the modules headers, rewrite, mime and dir. “host_files: [apache]” in "+
			"guide.yaml "+
			"writes it at every publish.",
	)
	fmt.Fprintf(&b, `DirectoryIndex index.html
ErrorDocument 404 %s%s
AddDefaultCharset Off
Options -Indexes -MultiViews
FileETag MTime Size
`, h.mount, lostURL)
	for _, ext := range endings() {
		fmt.Fprintf(&b, "AddType \"%s\" %s\n", kinds[ext], ext)
	}
	b.WriteString(`
<Files ".plumbline">
  Require all denied
  ErrorDocument 403 default
</Files>

`)
	h.comment(&b, "A compressed copy for whoever takes it.")
	b.WriteString(`RewriteEngine On
RewriteCond %{REQUEST_METHOD} "!^(GET|HEAD)$"
RewriteRule "" - [R=405,L]
`)
	for _, c := range [][2]string{{"br", "br"}, {"gzip", "gz"}} {
		fmt.Fprintf(&b, "RewriteCond %%{HTTP:Accept-Encoding} \"\\b%s\\b\"\n"+
			"RewriteCond %%{REQUEST_FILENAME}.%s -f\nRewriteRule "+
			"\"^(.*\\.(html|css|js|json|svg|txt|xml|wasm))$\" \"$1.%s\" "+
			"[L,E=coding:%s]\n", c[0], c[1], c[1], c[0])
	}
	for _, ext := range endings() {
		fmt.Fprintf(&b, "<FilesMatch \"\\%s\\.(br|gz)$\">\n  ForceType \"%s\"\n</FilesMatch>\n", ext, kinds[ext])
	}
	b.WriteString(`RemoveType .br .gz
RemoveEncoding .br .gz
<FilesMatch "\.br$">
  Header set Content-Encoding "br"
</FilesMatch>
<FilesMatch "\.gz$">
  Header set Content-Encoding "gzip"
</FilesMatch>
<FilesMatch "\.(html|css|js|json|svg|txt|wasm)(\.br|\.gz)?$">
  Header merge Vary "Accept-Encoding"
</FilesMatch>

`)
	for i := len(h.areas) - 1; i >= 0; i-- { // the particular ones have the last word
		a := h.areas[i]
		pattern := "^" + h.mount + a.under
		if a.under != "" && !strings.HasSuffix(a.under, "/") {
			pattern += "(\\.br|\\.gz)?$"
		}
		fmt.Fprintf(&b, "<If \"%%{REQUEST_URI} =~ m#%s#\">\n", pattern)
		for _, x := range append(a.sent(), [2]string{"Cache-Control", a.keep}) {
			fmt.Fprintf(&b, "  Header always set %s \"%s\"\n", x[0], x[1])
		}
		b.WriteString("</If>\n")
	}
	return b.String()
}

func storage(h host) string {
	var b strings.Builder
	h.comment(&b, "Object storage (a bucket that is shown as a website), or any host that only takes files:")
	b.WriteString("#\n")
	h.comment(&b, "1. Upload the published folder as it is. The files that end in .br and .gz may stay behind.")
	h.comment(&b, "2. Name index.html as the index document and 404.html as the error document.")
	h.comment(&b, "3. Give the files these types. A host that knows them already needs nothing from you.")
	for _, ext := range endings() {
		fmt.Fprintf(&b, "#      %-6s %s\n", ext, kinds[ext])
	}
	h.comment(
		&b,
		"4. Where headers can be set, set the ones below, path by path. “host_files: [headers]” in guide.yaml "+
			"writes this list into the guide as _headers, which several hosts read. Where none can be set the "+
			"guide works "+
			"too: each page carries its policy in itself.",
	)
	return b.String() + h.headersFile()
}

// headersFile is a list of headers by path, as several hosts of files read it. Where two
// paths fit, both count, so what differs between the areas is left out but for how long a
// file is kept; the policy stands in the pages too.
func (h host) headersFile() string {
	all, some := h.areas[0].sent(), h.areas[1].sent()
	var b strings.Builder
	fmt.Fprintf(&b, "%s*\n", h.mount)
	for i, x := range all {
		if x == some[i] {
			fmt.Fprintf(&b, "  %s: %s\n", x[0], x[1])
		}
	}
	fmt.Fprintf(&b, "\n%s%s*\n  Cache-Control: %s\n", h.mount, h.areas[0].under, h.areas[0].keep)
	return b.String()
}

// hostFiles are the files that guide.yaml asks for under “host_files”, by their names.
var hostFiles = map[string]string{"apache": ".htaccess", "headers": "_headers"}

// hostFile is one of them.
func (g *Guide) hostFile(name string) file {
	mount := g.mount()
	if mount == "./" {
		mount = "/"
	}
	h := host{mount: mount, reader: g.reader, areas: areas(g.top().Spoken()[1:])}
	text := h.headersFile()
	if name == "apache" {
		text = apache(h)
	}
	return file{path: hostFiles[name], data: []byte(text)}
}
