#!/usr/bin/env bash
# Where a cone goes down, °C, and which glazes suit it: ask.sh 6 60C/h
set -euo pipefail
root=${CONESERVICE:-http://localhost:5000}

# --retry asks again after 5xx, 429 and timeouts; --fail-with-body shows why a question was refused.
ask() { curl --silent --show-error --max-time 4 --retry 2 --fail-with-body "$@"; }

ask --get --data-urlencode "rate=$2" "$root/v1/cones/$1/end-point" \
  | jq -r '"cone \(.cone) at \(.rateCelsiusPerHour) °C/h: \(.celsius) °C, \(.confidence) (\(.sources | join(", ")))"'
ask --get --data-urlencode "cone=$1" "$root/v1/glazes" | jq -r '.items[] | "- \(.id)"'
