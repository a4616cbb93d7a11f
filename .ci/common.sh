# What the gates share. Sourced, never run: . .ci/common.sh

export FAIRMITER_CI=1 # a test must not skip what the machine lacks

# Tools are pinned here and fetched by version; they never enter go.mod.
STATICCHECK=honnef.co/go/tools/cmd/staticcheck@v0.8.2
APIDIFF=golang.org/x/exp/cmd/apidiff@v0.0.0-20261113113407-e3970619a1a4
AJV=(ajv@8.20.0 fast-deep-equal@3.1.3 fast-uri@3.1.9 json-schema-traverse@1.0.0 require-from-string@2.0.2)
AXE_CORE=axe-core@4.14.1

# What is kept between runs, outside the tree; AXE is the script that looks for
# what keeps people out of a page.
CACHE=${XDG_CACHE_HOME:-$HOME/.cache}/fairmiter-ci/${AXE_CORE/@/-}
export AXE=$CACHE/node_modules/axe-core/axe.min.js

# The packages that a gate looks at. Only selftest narrows it, to be quick;
# .ci/run clears it.
PKGS=${FAIRMITER_GATE_PKGS:-./...}

# without_site: the packages of a gate without those of the page. The browsers are
# slow, and no other however the library is built; the gate browser drives them.
without_site() {
  if [ "$PKGS" = ./... ]; then go list ./... | grep -v '/site'; else echo "$PKGS"; fi
}

red() { echo "red: $*"; exit 1; }

# A folder that goes when the gate ends. Module caches are write-protected.
scratch() {
  SCRATCH=$(mktemp -d)
  trap 'chmod -R u+w "$SCRATCH"; rm -rf "$SCRATCH"' EXIT
}

# sources [PATTERN...]: the files of the tree, committed or not yet, without the
# ignored ones, each ended by a NUL. A file deleted but not committed is left out.
sources() {
  git ls-files --cached --others --exclude-standard -z -- "$@" | sort -zu |
    while IFS= read -r -d '' f; do
      if [ -f "$f" ]; then printf '%s\0' "$f"; fi
    done
}

# copy DIR: the tree as it stands, without what git ignores.
copy() { sources | tar --null --files-from=- -cf - | tar -xf - -C "$1"; }

# readme_commands: the lines of README.md's sh blocks, in order. It is what the
# README promises to a newcomer.
readme_commands() {
  [ -f README.md ] || red "there is no README.md"
  awk '/^```/ { inside = ($0 == "```sh"); next } inside && !/^ *(#|$)/' README.md
}
