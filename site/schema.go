package site

import _ "embed"

// recordSchema describes a measurement record as JSON (JSON Schema 2020-12). It is
// published beside the pages, so that other people's tools can check what they
// read and write.
//
//go:embed record.schema.json
var recordSchema []byte

// schemaFile is the schema as a file of the guide.
func schemaFile() file { return file{path: "record.schema.json", data: recordSchema} }
