package main

import (
	"runtime/debug"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"

	"plumbline/wasm"
)

func TestTheVersionIsThatOfTheBuild(t *testing.T) {
	engine := "engine    " + wasm.Stamp() + "\n"
	info := &debug.BuildInfo{Main: debug.Module{Version: "v1.2.3"}, Settings: []debug.BuildSetting{
		{Key: "vcs", Value: "git"}, {Key: "vcs.revision", Value: "0123abcd"}, {Key: "vcs.modified", Value: "false"},
	}}
	assert.Equal(t, "plumbline v1.2.3\ncommit    0123abcd\n"+engine, version(info, nil))
	info.Settings[2].Value = "true"
	assert.Contains(t, version(info, nil), "commit    0123abcd, with changes since\n")
	assert.Equal(t, "plumbline unknown\ncommit    unknown\n"+engine, version(nil, nil))
}

func TestVersionAndLicencesAreSaid(t *testing.T) {
	for _, args := range [][]string{{"--version"}, {"calc", "--version"}} {
		var out, errs strings.Builder
		assert.Equal(t, statusDone, run(args, streams{out: &out, err: &errs}))
		assert.Regexp(t, `^plumbline \S+\ncommit    .+\nengine    [0-9a-f]{64}\n$`, out.String())
		assert.Empty(t, errs.String())
	}
}
