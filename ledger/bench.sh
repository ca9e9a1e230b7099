#!/bin/sh
# Generates a large workshop in the temporary folder (about 1.5 GB for the large one), times the questions of the pages, and
# removes it again.
#   ledger/bench.sh              2,000 batches, then 100,000 batches with 1,500,000 weighings
#   ledger/bench.sh 5000 20      5,000 batches with 20 weighings each
# MAVEN=./mvnw uses the wrapper in place of an installed Maven.
set -e
cd "$(dirname "$0")/.."
maven=${MAVEN:-mvn}
$maven -q -B -pl ledger -am test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/bench-classpath -DincludeScope=test -DexcludeGroupIds=stillroom
path="ledger/target/test-classes:ledger/target/classes:formulary/target/classes:science/target/classes"
run() {
    java -Xmx256m -cp "$path:$(cat ledger/target/bench-classpath)" stillroom.ledger.bench.WorkshopBenchmark "$1" "$2"
}
if [ $# -eq 2 ]; then
    run "$1" "$2"
else
    run 2000 15
    run 100000 15
fi
