"""Reads a season's outputs back: equal counts, equal values, real terms, the same bytes twice."""

import json
import pathlib
import random
import shutil
import signal
import subprocess
import sys
import time

import pandas
import pyarrow.parquet
from dwca.darwincore.terms import TERMS
from dwca.darwincore.utils import qualname
from dwca.read import DwCAReader

program, work = sys.argv[1], pathlib.Path(sys.argv[2])
shutil.rmtree(work, ignore_errors=True)
work.mkdir(parents=True)
# Terms the standard gained after the reader's list was made.
NEWER = {"organismQuantity", "verbatimIdentification"}
SEASON = "corpus-synthetic/season"
NAMES = ["season.jsonl", "season.csv", "season.parquet", "season.zip", "report.html", "account.json"]


def run(folder, *more, rows="mark"):
    folder.mkdir(exist_ok=True)
    outs = [a for n in NAMES[:4] for a in ("--out", str(folder / n))]
    command = [program, "--no-own-words", "season", SEASON, "--rows", rows, "--site", "Quillmere Fen", *outs]
    command += ["--report", str(folder / NAMES[4]), "--account", str(folder / NAMES[5]), "--quiet", *more]
    subprocess.run(command, check=True)


def read(folder):
    return {n: (folder / n).read_bytes() for n in NAMES}


first = work / "first"
run(first, "--threads", "1")
entries = [json.loads(line) for line in (first / "season.jsonl").open(encoding="utf-8")]
marks = [(e, b, t) for e in entries for b in e["birds"] for t in b["traits"]]
account = json.loads((first / "account.json").read_text())
assert account["entries"] == len(entries) and account["marks"] == len(marks), account["entries"]
assert account["bytes"]["all_accounted_for"]
size = sum(p.stat().st_size for p in pathlib.Path(SEASON).iterdir())
assert account["bytes"]["in"] == size == sum(account["bytes"]["used"].values())

# Places are true: the bytes of the file that a mark names begin with its words.
encodings = {"beginner.txt": "cp1252", "school.txt": "utf-16-le"}
for entry, _, mark in marks:
    path = pathlib.Path(entry["source"]["file"])
    start, end = mark["bytes"]
    there = path.read_bytes()[start:end].decode(encodings.get(path.name, "utf-8"))
    assert there[:1].lower() == mark["as_written"][:1].lower(), (path, start, there, mark["as_written"])

table = pandas.read_csv(first / "season.csv", dtype=str, keep_default_na=False)
columns = pyarrow.parquet.read_table(first / "season.parquet").to_pandas()
assert list(table.columns) == list(columns.columns)
silent = [e for e in entries if not e["birds"]]
assert len(table) == len(columns) == len(marks) + len(silent), (len(table), len(columns), len(marks))
assert (table["area"] != "").sum() == columns["area"].notna().sum() == len(marks)
for name in ["file", "place", "area", "aspect", "value", "as_written"]:
    assert list(columns[name].fillna("")) == list(table[name]), name
assert list(columns["start"]) == [int(n) for n in table["start"]]

birds = work / "birds"
run(birds, rows="bird")
wide = pandas.read_csv(birds / "season.csv", dtype=str, keep_default_na=False)
assert len(wide) == sum(max(1, len(e["birds"])) for e in entries)
assert list(pyarrow.parquet.read_table(birds / "season.parquet").to_pandas().columns) == list(wide.columns)

with DwCAReader(first / "season.zip") as archive:
    assert archive.descriptor.core.type == qualname("Occurrence")
    rows = list(archive)
    facts = [f for row in rows for f in row.extensions]
    assert len(facts) == len(marks), (len(facts), len(marks))
    assert len(rows) == sum(len(e["birds"]) or bool(e["named"]) for e in entries)
    assert len({row.id for row in rows}) == len(rows), "ids are unique"
    for term in archive.descriptor.core.terms:
        short = term.rsplit("/", 1)[1]
        if "/dwc/terms/" in term:
            assert term in TERMS or short in NEWER, term
    blurred = [r for r in rows if r.data[qualname("dataGeneralizations")]]
    assert blurred, "the demo season names sensitive kinds"
    for row in blurred:
        assert row.data[qualname("locality")] == "Quillmere Fen", row.data
        assert row.data[qualname("occurrenceRemarks")] == ""
    pato = [f for f in facts if f.data["http://rs.iobis.org/obis/terms/measurementValueID"]]
    assert pato and all("/obo/PATO_" in f.data["http://rs.iobis.org/obis/terms/measurementValueID"] for f in pato)

# The same bytes again, however many threads.
for threads in ("1", "2", "5"):
    again = work / "again"
    run(again, "--threads", threads)
    for name, bytes_ in read(again).items():
        assert bytes_ == read(first)[name], f"{name} differs with {threads} threads"

# Killed at any moment, the old files stay whole.
big = work / "big"
big.mkdir()
text = pathlib.Path(SEASON, "warden.md").read_text(encoding="utf-8")
(big / "notes.md").write_text(text * 60, encoding="utf-8")
target = work / "killed"
target.mkdir()
outs = [a for n in NAMES[:4] for a in ("--out", str(target / n))]
command = [program, "--no-own-words", "season", str(big), "--quiet", *outs]
started = time.time()
subprocess.run(command, check=True)
whole = time.time() - started
expected = {n: (target / n).read_bytes() for n in NAMES[:4]}
chance = random.Random(20)
for round_ in range(20):
    for name in NAMES[:4]:
        (target / name).write_bytes(b"the old one")
    child = subprocess.Popen(command)
    time.sleep(chance.uniform(0, whole))
    child.send_signal(signal.SIGKILL if round_ % 2 else signal.SIGINT)
    child.wait()
    for name in NAMES[:4]:
        found = (target / name).read_bytes()
        assert found in (b"the old one", expected[name]), f"{name} is broken"
    for left in target.glob(".*.part"):
        assert round_ % 2 or child.returncode in (0, 130), left
        left.unlink()
print(f"read back: {len(entries)} entries, {len(marks)} marks, {len(rows)} occurrences, {len(blurred)} blurred; 20 kills")
