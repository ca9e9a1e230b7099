#!/bin/sh
# Runs the benchmarks of this module; arguments go to JMH, for example: formulary/bench.sh label
# MAVEN=./mvnw uses the wrapper in place of an installed Maven.
set -e
cd "$(dirname "$0")/.."
maven=${MAVEN:-mvn}
$maven -q -B -pl formulary -am test-compile dependency:build-classpath \
    -Dmdep.outputFile=target/bench-classpath -DincludeScope=test -DexcludeGroupIds=stillroom
exec java -cp "formulary/target/test-classes:formulary/target/classes:science/target/classes:$(cat formulary/target/bench-classpath)" \
    org.openjdk.jmh.Main "$@"
