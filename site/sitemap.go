package site

import (
	"encoding/xml"
	"net/url"
	"strings"
)

// sitemapURL is where search engines find the addresses of all pages.
const sitemapURL = "sitemap.xml"

// onTheWeb is the whole address of a page, "" where the shop has not said where its
// guide will be. The front page's is that of the folder.
func (g *Guide) onTheWeb(page string) string {
	if g.Address == "" {
		return ""
	}
	if page == "index.html" {
		page = ""
	}
	return strings.TrimSuffix(g.Address, "/") + "/" + (&url.URL{Path: page}).EscapedPath()
}

// sitemap lists the pages as the protocol of sitemaps.org has it (version 0.9), nil
// where the guide has no address.
func (g *Guide) sitemap() []byte {
	if g.Address == "" {
		return nil
	}
	type place struct {
		Loc string `xml:"loc"`
	}
	set := struct {
		XMLName xml.Name `xml:"http://www.sitemaps.org/schemas/sitemap/0.9 urlset"`
		Places  []place  `xml:"url"`
	}{}
	for _, p := range g.pages {
		set.Places = append(set.Places, place{g.onTheWeb(p.URL)})
	}
	for _, page := range []string{glossaryURL, sourcesURL, elsewhereURL} {
		set.Places = append(set.Places, place{g.onTheWeb(page)})
	}
	b, err := xml.MarshalIndent(set, "", " ")
	if err != nil {
		panic(err) // strings can be written
	}
	return append([]byte(xml.Header), append(b, '\n')...)
}
