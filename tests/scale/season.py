"""Makes a season of many entries, by varying the demo season, and measures how fast it is cleaned."""

import json
import os
import random
import statistics
import subprocess
import sys
import time

program, reading_rate, work, count = sys.argv[1:]
count = int(count)
program = [program, "--no-own-words"]
folder, sample = f"{work}/in", f"{work}/sample.txt"
os.makedirs(folder, exist_ok=True)


def split(path):
    """The entries of notebooks, parted and not read."""
    done = subprocess.run([*program, "season", path, "--split", "--quiet"], check=True, capture_output=True)
    return done.stdout


def notes_in(entries):
    """The notes of parted entries, one line each."""
    return [" ".join(json.loads(line)["note"].split()) for line in entries.splitlines()]


def make():
    """Writes the season, and a sample of its first 20 MB."""
    notes = notes_in(split("corpus-synthetic/season"))
    chance = random.Random(7)
    places = ["Boathouse hide", "East sluice", "North Hide", "Long Bank"]
    with open(f"{folder}/season.txt", "w", encoding="utf-8") as out:
        for n in range(count):
            if n % 7 == 0:
                out.write(f"{n % 28 + 1} May {2020 + n % 6}, {chance.choice(places)}\n\n")
            out.write(chance.choice(notes) + "\n\n")
    with open(f"{folder}/season.txt", "rb") as whole, open(sample, "wb") as out:
        out.write(whole.read(20_000_000))


def seconds(*arguments, **how):
    started = time.time()
    subprocess.run([*program, *arguments], check=True, stdout=subprocess.DEVNULL, **how)
    return time.time() - started


def rates():
    """Entries a second: reading on one thread, to traits and to JSON Lines, and a season on all cores."""
    entries = split(sample)
    with open(f"{work}/sample.jsonl", "wb") as out:
        out.write(entries)
    notes = notes_in(entries)
    with open(f"{work}/notes.txt", "w", encoding="utf-8") as out:
        out.write("".join(note + "\n" for note in notes))
    threads = str(os.cpu_count())
    found = {"traits": [], "lines": [], "csv": [], "jsonl": []}
    # In turn, many rounds over: the machine may have other things to do.
    for _ in range(7):
        with open(f"{work}/sample.jsonl", "rb") as lines:
            told = subprocess.run([reading_rate], stdin=lines, check=True, capture_output=True, text=True).stdout
        found["traits"].append(float(told.split()[0]))
        with open(f"{work}/notes.txt", "rb") as lines:
            took = seconds("read", "--each-line", "--top", "0", "--format", "jsonl", stdin=lines)
        found["lines"].append(len(notes) / took)
        for form in ("csv", "jsonl"):
            took = seconds("season", sample, "--threads", threads, "--quiet", "--format", form)
            found[form].append(len(notes) / took)
    rate = {name: statistics.median(rates) for name, rates in found.items()}
    print(f"one thread: {rate['traits']:.0f} notes a second to traits, {rate['lines']:.0f} to JSON Lines")
    for form in ("csv", "jsonl"):
        shares = [rate[form] / (rate[name] * int(threads)) for name in ("traits", "lines")]
        print(
            f"season on {threads} threads as {form}: {rate[form]:.0f} entries a second, "
            f"{shares[0]:.2f} of cores times reading to traits, {shares[1]:.2f} of cores times reading to JSON Lines"
        )


def whole():
    """The whole season to two files: time, and the most memory held."""
    for threads in sorted({1, os.cpu_count()}):
        arguments = ["season", folder, "--threads", str(threads), "--quiet"]
        arguments += ["--out", f"{work}/out.jsonl", "--out", f"{work}/out.csv", "--account", f"{work}/account.json"]
        # GNU time has little memory of its own; that of this process would be counted as the program's.
        watched = ["/usr/bin/time", "--quiet", "--format", "%M", "--output", f"{work}/memory.txt", *program]
        started = time.time()
        subprocess.run([*watched, *arguments], check=True)
        took = time.time() - started
        with open(f"{work}/memory.txt", encoding="utf-8") as file:
            memory = int(file.read()) / 1024
        with open(f"{work}/account.json", encoding="utf-8") as file:
            account = json.load(file)
        print(
            f"{threads} threads: {account['entries']} entries, {account['bytes']['in'] / 1e6:.0f} MB to two files in "
            f"{took:.1f} s, {account['entries'] / took:.0f} a second, {memory:.0f} MB of memory"
        )
        assert account["entries"] == count, account["entries"]
        assert account["bytes"]["all_accounted_for"], account["bytes"]
        assert memory < 100, memory


make()
rates()
whole()
