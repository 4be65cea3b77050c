# Plumbline. "make" alone prints the targets.

GUIDE  ?=
OUT    ?= public
ONLY   ?=
TIME   ?= 1h
GO     ?= go

.DEFAULT_GOAL := help
.PHONY: help guide preview test check lint bench mutate figures texts fuzz picture engine judges browser servers release lighthouse

help: ## print this list
	@grep -hE '^[a-z]+:.*## ' $(MAKEFILE_LIST) | awk -F':.*## ' '{printf "  make %-10s %s\n", $$1, $$2}'

engine:
	@$(GO) generate ./wasm

guide: engine ## build the engine and publish the guide into public/ (GUIDE=folder lays your own over it)
	@$(GO) run ./cmd/plumbline publish $(GUIDE) -o $(OUT)

preview: engine ## show the guide on this machine and publish again at every save (GUIDE=folder)
	@$(GO) run ./cmd/plumbline preview $(GUIDE)

browser:
	@.ci/browser

judges:
	@.ci/judges

servers:
	@.ci/servers

test: browser judges servers engine ## run every test, the browser's and WebAssembly's included
	@.ci/test

check: browser judges servers engine ## what the build server runs: format, vet, staticcheck, judges, tests, race detector
	@.ci/check

lint: judges engine ## judge the published pages, their styles and scripts, and run the scripts' tests
	@.ci/lint

lighthouse: browser engine ## let Lighthouse judge eight pages, as on a slow phone and on a desk
	@.ci/lighthouse

bench: engine ## measure speed and size against the figures in DEVELOPERS.md
	@.ci/bench

mutate: ## count the arithmetic faults that the maths' own tests notice (PACKAGES="./calculators/body ...")
	@.ci/mutate $(PACKAGES)

texts: ## list every text that a reader may see, and bring the languages' catalogues up to date (needs GNU gettext)
	@$(GO) run ./site/texts

fuzz: ## give every reader of what people send any text at all (TIME=1h each)
	@TIME=$(TIME) .ci/fuzz

figures: ## write one page with every figure at three widths, light, dark and printed, into figures/ (OUT=folder, ONLY=name, IN=de)
	@$(GO) run .ci/figures.go $(or $(filter-out public,$(OUT)),figures) '$(ONLY)' '$(IN)'

picture: engine ## make the README's picture of a published page anew
	@.ci/picture

release: ## build the command for Linux, macOS and Windows with checksums and a bill of materials into release/
	@.ci/release
