package main

import "plumbline/site/phrases"

// withPages adds what page templates and page modules say.
func withPages(list []text) ([]text, error) {
	pages, err := phrases.All()
	if err != nil {
		return nil, err
	}
	for _, x := range pages {
		list = append(list, text{x.English, x.More, []string{x.By}})
	}
	return joined(list)
}
