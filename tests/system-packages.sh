#!/usr/bin/env bash
# Installs what the tests call beside Node where it is missing: a browser to look at the app with, a reader of PDF. Debian and its kin, as root or with sudo.
set -euo pipefail
missing=()
[ -n "${CHROMIUM:-}" ] || command -v chromium chromium-browser google-chrome >/dev/null || missing+=(chromium)
command -v pdftoppm pdfinfo >/dev/null || missing+=(poppler-utils)
[ "${#missing[@]}" -gt 0 ] || exit 0
if ! command -v apt-get >/dev/null; then
  echo "Please install ${missing[*]}, or name a Chromium in CHROMIUM: the tests need them." >&2
  exit 1
fi
as_root=()
[ "$(id -u)" = 0 ] || as_root=(sudo)
"${as_root[@]}" apt-get update -q
DEBIAN_FRONTEND=noninteractive "${as_root[@]}" apt-get install -y -q --no-install-recommends "${missing[@]}"
