# Each target first sets up what it needs (.tools/setup.sh; nothing is done twice).
#
#   make serve      builds the page and serves it on this machine (PORT=8080)
#   make dist       writes the static site to dist/
#   make check      the quick checks: format, lint and tests of the core
#   make test       every check, browsers included
#   make fuzz       a million mutated links, files and stored texts
#   make mutation   changes the readers of saved plans in small ways: does a test notice? (hours)
#   make advisories holds all dependencies to the published advisories (asks the network)
#   make bench      times a season and a thousand, side by side with general reference codes and in Chromium
#   make pictures   takes the pictures of the README, and draws the icons of the installed page
#   make clean      removes what was built here (the shared tools stay in the cache)

SHELL := bash
PORT ?= 8080
TOOLS := .tools

.PHONY: serve dist check test fuzz mutation advisories bench pictures clean

serve: dist
	@exec node tests/browser/serve.mjs dist --port $(PORT) --open

dist:
	@$(TOOLS)/setup.sh page
	@$(TOOLS)/build.sh

check:
	@$(TOOLS)/setup.sh check
	@$(TOOLS)/test.sh check

test:
	@$(TOOLS)/setup.sh test
	@$(TOOLS)/test.sh test

fuzz:
	@$(TOOLS)/setup.sh check
	@CARGO_PROFILE_DEV_OPT_LEVEL=3 cargo test --locked --no-default-features --target-dir target/fuzz --test laws -- --ignored --nocapture a_million

mutation:
	@$(TOOLS)/setup.sh mutation
	@$(TOOLS)/mutation.sh

advisories:
	@$(TOOLS)/setup.sh advisories
	@$(TOOLS)/advisories.sh

bench: dist
	@$(TOOLS)/setup.sh test
	@. $(TOOLS)/lib.sh && use_python && cargo bench --locked --no-default-features --bench season_bench && python3 tests/peers/phreeqc/compare.py --bench && python3 tests/peers/ensemble/monte_carlo.py --bench && node tests/browser/seasons-bench.mjs

pictures: dist
	@$(TOOLS)/setup.sh test
	@node tests/browser/pictures.mjs
	@node tests/browser/icons.mjs

clean:
	@cargo clean
	@rm -rf dist tests/browser/node_modules tests/browser/out
