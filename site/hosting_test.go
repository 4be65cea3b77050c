package site

import (
	"context"
	"fmt"
	"io"
	"net"
	"net/http"
	"net/http/httptest"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// program finds a server, or skips the test where the machine has none.
func program(t *testing.T, names ...string) string {
	t.Helper()
	for _, name := range names {
		for _, dir := range append(filepath.SplitList(os.Getenv("PATH")), "/usr/sbin") {
			if p := filepath.Join(dir, name); isExecutable(p) {
				return p
			}
		}
	}
	if os.Getenv("PLUMBLINE_NEED_SERVERS") != "" {
		t.Fatal(names[0], " is missing")
	}
	t.Skip(names[0], " is not installed (.ci/servers)")
	return ""
}

func isExecutable(p string) bool {
	info, err := os.Stat(p)
	return err == nil && !info.IsDir() && info.Mode()&0o111 != 0
}

// freePort is a port that nobody listens at.
func freePort(t *testing.T) int {
	t.Helper()
	l, err := net.Listen("tcp", "127.0.0.1:0")
	require.NoError(t, err)
	defer l.Close()
	return l.Addr().(*net.TCPAddr).Port
}

// running starts a server and waits until it answers.
func running(t *testing.T, port int, name string, args ...string) {
	t.Helper()
	ctx, cancel := context.WithCancel(context.Background())
	c := exec.CommandContext(ctx, name, args...)
	var said strings.Builder
	c.Stdout, c.Stderr = &said, &said
	c.Cancel = func() error { return c.Process.Signal(os.Interrupt) }
	c.WaitDelay = 5 * time.Second
	c.Env = append(os.Environ(), "HOME="+t.TempDir(), "XDG_DATA_HOME="+t.TempDir(), "XDG_CONFIG_HOME="+t.TempDir())
	require.NoError(t, c.Start())
	ended := make(chan error, 1)
	go func() { ended <- c.Wait() }()
	t.Cleanup(func() {
		cancel()
		<-ended
	})
	for range 100 {
		if conn, err := net.Dial("tcp", fmt.Sprintf("127.0.0.1:%d", port)); err == nil {
			conn.Close()
			return
		}
		select {
		case err := <-ended:
			ended <- err
			t.Fatalf("%s ended: %v\n%s", name, err, said.String())
		case <-time.After(100 * time.Millisecond):
		}
	}
	t.Fatalf("%s does not answer\n%s", name, said.String())
}

// site of the test: the small guide, where every server can read it.
func hostedGuide(t *testing.T) string {
	t.Helper()
	above, err := os.MkdirTemp("", "hosting")
	require.NoError(t, err)
	t.Cleanup(func() { os.RemoveAll(above) })
	require.NoError(t, os.Chmod(above, 0o755))
	dir := filepath.Join(above, "guide")
	g, bad := shopOver(map[string]string{
		"guide.yaml":     "address: https://alder-bank.example/fit/\nlanguages: [en, de]\n",
		"saddle/tilt.md": string(page("```calculator saddle-height\n```\n").Data)})
	require.Empty(t, lines(bad))
	publish(t, g, dir)
	return dir
}

// sendsTheSame asks a server and the project's own handler for the same things, and holds
// one to the other: status, body, and every header that a guide is sent with.
func sendsTheSame(t *testing.T, dir, base string, codings ...string) {
	t.Helper()
	own := Handler(dir)
	client := &http.Client{Transport: &http.Transport{DisableCompression: true},
		CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	var paths []string
	for _, pattern := range []string{"index.html", "saddle/height.html", "find.json", "licences.txt", sitemapURL,
		"assets/page-*/style.css", "assets/page-*/page.js", "assets/page-*/icon.svg", "assets/engine-*/whole.wasm",
		"embed/saddle-height.html", "de/embed/saddle-height.html",
		"de/" + elementURL, elementURL} {
		found, err := filepath.Glob(filepath.Join(dir, filepath.FromSlash(pattern)))
		require.NoError(t, err)
		require.NotEmpty(t, found, pattern)
		rel, err := filepath.Rel(dir, found[0])
		require.NoError(t, err)
		paths = append(paths, filepath.ToSlash(rel))
	}
	paths = append(paths, "", "saddle/", "nowhere", "saddle/no/where.html", ".plumbline")
	for _, p := range paths {
		for _, coding := range append(codings, "identity") {
			want := httptest.NewRecorder()
			r := httptest.NewRequest("GET", "/"+p, nil)
			r.Header.Set("Accept-Encoding", coding)
			own.ServeHTTP(want, r)
			r, err := http.NewRequestWithContext(t.Context(), "GET", base+p, nil)
			require.NoError(t, err)
			r.Header.Set("Accept-Encoding", coding)
			got, err := client.Do(r)
			require.NoError(t, err)
			body, err := io.ReadAll(got.Body)
			got.Body.Close()
			require.NoError(t, err)
			at := fmt.Sprintf("%s as %s", p, coding)
			if p == ".plumbline" {
				assert.Contains(t, []int{403, 404}, got.StatusCode, at)
				continue
			}
			assert.Equal(t, want.Code, got.StatusCode, at)
			names := []string{"Content-Type", "Cache-Control"}
			for _, x := range areas(nil)[0].sent() {
				names = append(names, x[0])
			}
			if want.Code == http.StatusOK {
				names = append(names, "Content-Encoding")
				assert.True(t, want.Body.String() == string(body), at+": another body")
			} else {
				packed := got.Header.Get("Content-Encoding") != ""
				assert.True(t, packed || strings.Contains(string(body), "There is no such page"), at)
			}
			for _, name := range names {
				assert.Equal(t, want.Header().Values(name), got.Header.Values(name), "%s: %s", at, name)
			}
			if want.Header().Get("Content-Encoding") != "" {
				assert.Contains(t, strings.Join(got.Header.Values("Vary"), ","), "Accept-Encoding", at)
			}
		}
	}
	// A folder's address gets its slash, and nothing is written to.
	got, err := client.Get(base + "saddle")
	require.NoError(t, err)
	got.Body.Close()
	assert.Contains(t, []int{301, 307, 308}, got.StatusCode)
	assert.True(t, strings.HasSuffix(got.Header.Get("Location"), "saddle/"), got.Header.Get("Location"))
	got, err = client.Post(base+"index.html", "text/plain", strings.NewReader("x"))
	require.NoError(t, err)
	got.Body.Close()
	assert.Equal(t, http.StatusMethodNotAllowed, got.StatusCode)
}

func TestNginxSendsAGuideAsItShould(t *testing.T) {
	name := program(t, "nginx")
	dir := hostedGuide(t)
	for _, mount := range []string{"/fit/", "/"} {
		text, err := Hosting("nginx", mount, dir, nil)
		require.NoError(t, err)
		codings, load := []string{"gzip"}, ""
		if module := "/usr/lib/nginx/modules/ngx_http_brotli_static_module.so"; isReadable(module) {
			codings, load = append(codings, "br"), "load_module "+module+";\n"
			text = strings.ReplaceAll(text, "#brotli_static", "brotli_static")
		}
		port, work := freePort(t), t.TempDir()
		conf := filepath.Join(work, "nginx.conf")
		require.NoError(t, os.WriteFile(conf, []byte(load+fmt.Sprintf("daemon off; pid %[1]s/pid; error_log "+
			"%[1]s/log;\n"+
			"events {}\nhttp {\naccess_log off; client_body_temp_path %[1]s/a; proxy_temp_path %[1]s/b; "+
			"fastcgi_temp_path %[1]s/c; uwsgi_temp_path %[1]s/d; scgi_temp_path %[1]s/e;\n"+
			"server { listen 127.0.0.1:%[2]d;\n%[3]s\n} }\n", work, port, text)), 0o600))
		t.Run(mount, func(t *testing.T) {
			running(t, port, name, "-c", conf, "-e", filepath.Join(work, "first"))
			sendsTheSame(t, dir, fmt.Sprintf("http://127.0.0.1:%d%s", port, mount), codings...)
		})
	}
}

func isReadable(p string) bool { _, err := os.Stat(p); return err == nil }

func TestCaddySendsAGuideAsItShould(t *testing.T) {
	name := program(t, "caddy")
	dir := hostedGuide(t)
	for _, mount := range []string{"/fit/", "/"} {
		text, err := Hosting("caddy", mount, dir, nil)
		require.NoError(t, err)
		port := freePort(t)
		conf := filepath.Join(t.TempDir(), "Caddyfile")
		require.NoError(t, os.WriteFile(conf, fmt.Appendf(nil, "{\n\tadmin off\n\tauto_https "+
			"off\n}\nhttp://127.0.0.1:%d {\n%s}\n",
			port, text), 0o600))
		t.Run(mount, func(t *testing.T) {
			running(t, port, name, "run", "--config", conf, "--adapter", "caddyfile")
			sendsTheSame(t, dir, fmt.Sprintf("http://127.0.0.1:%d%s", port, mount), "br", "gzip")
		})
	}
}

func TestApacheSendsAGuideAsItShould(t *testing.T) {
	name := program(t, "apache2", "httpd")
	modules := "/usr/lib/apache2/modules/"
	if !isReadable(modules) {
		t.Skip("the modules of Apache are somewhere else here")
	}
	dir := hostedGuide(t)
	for _, mount := range []string{"/fit/", "/"} {
		text, err := Hosting("apache", mount, dir, nil)
		require.NoError(t, err)
		require.NoError(t, os.WriteFile(filepath.Join(dir, ".htaccess"), []byte(text), 0o644))
		port, work := freePort(t), t.TempDir()
		var load strings.Builder
		for _, m := range []string{"mpm_event", "authz_core", "dir", "mime", "headers", "rewrite", "alias"} {
			fmt.Fprintf(&load, "LoadModule %s_module %smod_%s.so\n", m, modules, m)
		}
		conf := filepath.Join(work, "httpd.conf")
		user := ""
		if os.Getuid() == 0 {
			user = "User www-data\nGroup www-data\n"
		}
		require.NoError(t, os.WriteFile(conf, fmt.Appendf(nil, "ServerRoot %[1]s\nPidFile %[1]s/pid\nListen "+
			"127.0.0.1:%[2]d\n"+
			"ServerName localhost\nErrorLog %[1]s/log\nTypesConfig /dev/null\n%[5]s%[6]sAlias \"%[3]s\" \"%[4]s/\"\n"+
			"<Directory \"%[4]s\">\nAllowOverride All\nRequire all granted\n</Directory>\n",
			work, port, mount, dir, load.String(), user), 0o600))
		t.Run(mount, func(t *testing.T) {
			running(t, port, name, "-f", conf, "-DFOREGROUND")
			sendsTheSame(t, dir, fmt.Sprintf("http://127.0.0.1:%d%s", port, mount), "br", "gzip")
		})
	}
}

func TestHostingOfWhatIsNotThere(t *testing.T) {
	_, err := Hosting("iis", "/", "/srv", nil)
	assert.ErrorContains(t, err, "the servers are nginx, caddy, apache and storage")
	_, err = Hosting("nginx", "/a;b/", "/srv", nil)
	assert.ErrorContains(t, err, "choose another path")
	text, err := Hosting("storage", "fit", "", nil)
	require.NoError(t, err)
	assert.Contains(t, text, "\n/fit/assets/*\n  Cache-Control: public, max-age=31536000, immutable\n")
	assert.Contains(t, text, ".wasm  application/wasm")
}

// TestFilesForHostsAreWrittenOnRequest publishes them, and they hold the guide's path.
func TestFilesForHostsAreWrittenOnRequest(t *testing.T) {
	g, bad := shopOver(map[string]string{"guide.yaml": "address: https://a.example/fit\nhost_files: [apache, " +
		"headers]\n"})
	require.Empty(t, lines(bad))
	all := built(t, g)
	assert.Contains(t, string(all[".htaccess"]), "ErrorDocument 404 /fit/404.html")
	assert.Contains(t, string(all["_headers"]), "/fit/*\n  X-Content-Type-Options: nosniff\n")
	_, bad = shopOver(map[string]string{"guide.yaml": "host_files: [iis]\n"})
	wantMistake(t, bad, "there is no file for “iis”, write apache or headers")
	assert.NotContains(t, built(t, demo(t)), "_headers")
}

// TestALanguageOfAShopsOwnMayStandElsewhereToo: calculators on other pages, in a language that
// the built-in guide does not have.
func TestALanguageOfAShopsOwnMayStandElsewhereToo(t *testing.T) {
	assert.True(t, areaOf("fr/embed/saddle-height.html").foreign)
	assert.True(t, areaOf("pt-BR/"+elementURL).foreign)
	assert.False(t, areaOf("saddle/embed/height.html").foreign)
	assert.False(t, areaOf("fr/saddle/height.html").foreign)
	dir := t.TempDir()
	require.NoError(t, os.WriteFile(filepath.Join(dir, settingsFile), []byte("languages: [en, fr, \"{}\"]\n"), 0o600))
	assert.Equal(t, []string{"en", "fr"}, LanguagesOf(dir))
	for _, server := range []string{"nginx", "caddy", "apache"} {
		text, err := Hosting(server, "/fit/", "/srv", nil, LanguagesOf(dir)...)
		require.NoError(t, err)
		assert.Contains(t, text, "/fit/fr/embed/", server)
		assert.Contains(t, text, "/fit/de/embed/", server)
		assert.NotContains(t, text, "{}/embed", server)
	}
}
