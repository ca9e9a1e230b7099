#!/bin/sh
# How long the pages of a workshop with 2,000 batches take; with "law", how long every one of 10,000 stored formulas takes to be
# judged by the law of another day (at most 20 s on two cores); with "anew", how long a substitution from a shelf of 120 materials
# takes (at most 1 s). Not part of ./check: a busy machine must not fail it.
# MAVEN=./mvnw uses the wrapper in place of an installed Maven.
set -eu
cd "$(dirname "$0")/.."
maven=${MAVEN:-mvn}
"$maven" -q -B -pl desk -am test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/bench-classpath -DincludeScope=test -DexcludeGroupIds=stillroom
path="desk/target/test-classes:desk/target/classes:ledger/target/classes:formulary/target/classes:science/target/classes"
if [ "${1:-}" = law ]; then
    shift
    main=stillroom.desk.law.SweepBenchmark
elif [ "${1:-}" = anew ]; then
    shift
    main=stillroom.desk.reformulation.AnewBenchmark
else
    main=stillroom.desk.bench.PageBenchmark
fi
exec java -Xmx160m -XX:+UseSerialGC -XX:TieredStopAtLevel=1 \
    -cp "$path:$(cat desk/target/bench-classpath)" "$main" "$@"
