"""A season read by a local Spark cluster of two workers, against the same season read in one run."""

import pathlib
import shutil
import subprocess
import sys

from pyspark.sql import SparkSession

program, season, work = sys.argv[1], sys.argv[2], pathlib.Path(sys.argv[3])
single, parted, shared = work / "single.jsonl", work / "parted.jsonl", work / "shared"
base = [program, "--no-own-words", "season", "--quiet"]
subprocess.run([*base, season, "--out", str(single)], check=True)
subprocess.run([*base, season, "--split", "--out", str(parted)], check=True)
shutil.rmtree(shared, ignore_errors=True)

# local-cluster[workers, cores, MB]: real workers, each a process of its own.
spark = (
    SparkSession.builder.master("local-cluster[2,1,1024]")
    .appName("season")
    .config("spark.ui.enabled", "false")
    .config("spark.executor.memory", "1g")
    .getOrCreate()
)
lines = spark.sparkContext.textFile(str(parted.resolve()), minPartitions=8)
read = lines.pipe(f"{program} --no-own-words season --quiet --from jsonl --format jsonl -", checkCode=True)
read.saveAsTextFile(str(shared.resolve()))
count = lines.getNumPartitions()
spark.stop()

together = b"".join(p.read_bytes() for p in sorted(shared.glob("part-*")))
assert together == single.read_bytes(), "the cluster's rows differ from the single run's"
print(f"{together.count(bytes([10]))} entries in {count} parts by two workers: the same as in one run")
