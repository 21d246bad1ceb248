#!/bin/sh
# What must hold before a change lands; a hosted build runs it too.
set -eu
cd "$(dirname "$0")/.."
downlead fmt --check .
downlead check --history "$@" .
