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
	return strings.TrimSuffix(g.Address, "/") + "/" + g.within + (&url.URL{Path: page}).EscapedPath()
}

// alternate is the same page in a language, as search engines read it in a sitemap.
type alternate struct {
	Rel      string `xml:"rel,attr"`
	Language string `xml:"hreflang,attr"`
	Href     string `xml:"href,attr"`
}

// sitemap lists the pages as the protocol of sitemaps.org has it (version 0.9), nil
// where the guide has no address.
func (g *Guide) sitemap() []byte {
	if g.Address == "" {
		return nil
	}
	type place struct {
		Loc   string      `xml:"loc"`
		Other []alternate `xml:"xhtml:link"`
	}
	set := struct {
		XMLName xml.Name `xml:"http://www.sitemaps.org/schemas/sitemap/0.9 urlset"`
		XHTML   string   `xml:"xmlns:xhtml,attr,omitempty"`
		Places  []place  `xml:"url"`
	}{}
	if len(g.others) > 0 {
		set.XHTML = "http://www.w3.org/1999/xhtml"
	}
	for _, each := range g.everyLanguage() {
		var urls []string
		for _, p := range each.pages {
			urls = append(urls, p.URL)
		}
		urls = append(urls, glossaryURL, sourcesURL, elsewhereURL)
		if len(each.bikes) > 0 {
			urls = append(urls, bikesURL)
		}
		for _, page := range urls {
			at := place{Loc: each.onTheWeb(page)}
			if len(g.others) > 0 {
				for _, other := range g.everyLanguage() {
					at.Other = append(at.Other, alternate{"alternate", other.Language, other.onTheWeb(page)})
				}
			}
			set.Places = append(set.Places, at)
		}
	}
	b, err := xml.MarshalIndent(set, "", " ")
	if err != nil {
		panic(err) // strings can be written
	}
	return append([]byte(xml.Header), append(b, '\n')...)
}
