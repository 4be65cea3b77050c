package site

import _ "embed"

//go:generate go run ./licences

// licences is made by go generate ./site from the modules that go list names; a
// test beside its generator fails when it is stale. It is embedded, because a
// released command runs where those modules are not.
//
//go:embed licences.txt
var licences string

// licencesURL is where the licences stand in a published guide.
const licencesURL = "licences.txt"

// Licences returns, as plain text, the licences of everything whose code is in the
// engine, in a page or in the command: the project, Go and the libraries.
func Licences() string { return licences }

// licencesFile is the licences as a file of the guide. The licences of Go and of the
// libraries ask to be handed on with the code.
func licencesFile() file { return file{path: licencesURL, data: []byte(licences)} }
